using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// Turns an entry into what it moves and establishes, or refuses it with a reason. Pure: the same facts give the same
/// answer.
/// </summary>
public static class PostingRules
{
    private const int LongestNote = 10_000;

    /// <summary>Decides on an entry.</summary>
    /// <param name="entry">What happened.</param>
    /// <param name="holdings">What the ledger holds.</param>
    /// <param name="past">What the ledger knows of the past.</param>
    /// <param name="today">The day of recording; an entry cannot be later.</param>
    /// <param name="replay">The names that the entry gave when it was decided before; null for one that is recorded
    /// now. What is unlikely was answered then, so it is only remarked.</param>
    public static Decision Decide(Entry entry, Holdings holdings, IPast past, LocalDate today,
        GivenNames? replay = null)
    {
        try
        {
            var kept = EntryTexts.Checked(entry);
            var draft = new Draft(kept, holdings, past, replay ?? new(), isReplay: replay is not null);
            CheckFrame(kept, today);
            Post(kept, draft);
            draft.Settle(today);
            return new Accepted(draft.ToPosting());
        }
        catch (RefusedException refused)
        {
            return new Refused(refused.Refusal);
        }
        catch (OverflowException)
        {
            return new Refused(new(RefusalKind.NotAccepted, "a figure is too large to be kept exactly"));
        }
    }

    /// <summary>
    /// Decides on taking back or amending an entry whose words are kept. What then follows from all entries is decided
    /// one by one.
    /// </summary>
    /// <param name="act">The undo or the amendment.</param>
    /// <param name="past">What the ledger knows of the past.</param>
    public static Decision DecideAct(Entry act, IPast past)
    {
        try
        {
            return new Accepted(EntryTexts.Checked(act) switch
            {
                Undo undo => ActRules.Post(undo, UndoRules.Find(undo.Number, undo.Reference, past)),
                Amendment amendment => ActRules.Post(amendment,
                    UndoRules.Find(amendment.Number, amendment.Reference, past)),
                var other => throw new ArgumentException($"a {other.Kind} is about no other entry", nameof(act)),
            });
        }
        catch (RefusedException refused)
        {
            return new Refused(refused.Refusal);
        }
    }

    /// <summary>The entry that another one of its day is to come before.</summary>
    /// <param name="before">Its number or its reference.</param>
    /// <param name="date">The day of the one that is placed.</param>
    /// <param name="past">What the ledger knows of the past.</param>
    /// <param name="refusal">Why there is none; null when there is.</param>
    public static JournalEntry? PlaceBefore(string before, LocalDate date, IPast past, out Refusal? refusal)
    {
        try
        {
            refusal = null;
            return PlaceRules.Before(before, date, past);
        }
        catch (RefusedException refused)
        {
            refusal = refused.Refusal;
            return null;
        }
    }

    /// <summary>What the journal says of an undo or an amendment.</summary>
    /// <param name="act">The undo or the amendment.</param>
    /// <param name="number">The number of the entry that it is about.</param>
    /// <param name="kind">The kind of that entry.</param>
    public static string SummaryOf(Entry act, long number, string kind) => ActRules.Summary(act, number, kind);

    private static void Post(Entry entry, Draft draft)
    {
        switch (entry)
        {
            case ItemDefinition definition: DefinitionRules.Post(definition, draft); break;
            case FormatDefinition definition: DefinitionRules.Post(definition, draft); break;
            case ProcessDefinition definition: DefinitionRules.Post(definition, draft); break;
            case SettingChange change: DefinitionRules.Post(change, draft); break;
            case Delivery delivery: DeliveryRules.Post(delivery, draft); break;
            case Opening opening: OpeningRules.Post(opening, draft); break;
            case BathMixing mixing: BathRules.Post(mixing, draft); break;
            case SessionLog session: SessionRules.Post(session, draft); break;
            case PlannedSession planned: PlanRules.Post(planned, draft); break;
            case PlanEnding ending: PlanRules.Post(ending, draft); break;
            case Discard discard: DiscardRules.Post(discard, draft); break;
            case StockCount count: CountRules.Post(count, draft); break;
            case HolderDefinition definition: HolderRules.Post(definition, draft); break;
            case Cleaning cleaning: HolderRules.Post(cleaning, draft); break;
            case SideService service: HolderRules.Post(service, draft); break;
            case Load load: LoadRules.Post(load, draft); break;
            case ExposureNote exposure: ExposureRules.Post(exposure, draft); break;
            case Unload unload: UnloadRules.Post(unload, draft); break;
            case KeeperNaming keeper: SheetLifeRules.Post(keeper, draft); break;
            case FateChange change: SheetLifeRules.Post(change, draft); break;
            case SheetNote note: SheetLifeRules.Post(note, draft); break;
            case Filing filing: SheetLifeRules.Post(filing, draft); break;
            case SuspicionRaising raising: SuspicionRules.Post(raising, draft); break;
            case SuspicionClearing clearing: SuspicionRules.Post(clearing, draft); break;
            case StorageMove move: StorageRules.Post(move, draft); break;
            case ExposureIndexSetting rating: StorageRules.Post(rating, draft); break;
            case PrintSession prints: PrintRules.Post(prints, draft); break;
            case Rotation rotation: RotationRules.Post(rotation, draft); break;
            case TopUp topUp: TopUpRules.Post(topUp, draft); break;
            case ClearingTest test: BathTestRules.Post(test, draft); break;
            case BathObservation seen: BathTestRules.Post(seen, draft); break;
            case SilverTest test: BathTestRules.Post(test, draft); break;
            case ResidualCheck check: BathTestRules.Post(check, draft); break;
            case IndicatorReading look: BathTestRules.Post(look, draft); break;
            case ControlStripTest strip: BathTestRules.Post(strip, draft); break;
            case BathStorage storage: BathTestRules.Post(storage, draft); break;
            case Decanting decanting: BottleRules.Post(decanting, draft); break;
            case StockSolution mixing: BottleRules.Post(mixing, draft); break;
            case JugStart start: JugRules.Post(start, draft); break;
            case JugFilling filling: JugRules.Post(filling, draft); break;
            case JugHandover handover: JugRules.Post(handover, draft); break;
            case OrderPlacement placement: OrderRules.Post(placement, draft); break;
            case OrderChange change: OrderRules.Post(change, draft); break;
            case OrderCancellation cancellation: OrderRules.Post(cancellation, draft); break;
            case PriceRiseNotice notice: OrderRules.Post(notice, draft); break;
            case OrderTermsSetting setting: OrderRules.Post(setting, draft); break;
            case NoticeSnooze snooze: SnoozeRules.Post(snooze, draft); break;
            case Undo undo: UndoRules.Post(undo, draft); break;
            default: throw new ArgumentException($"no rule posts a {entry.Kind}", nameof(entry));
        }
    }

    private static void CheckFrame(Entry entry, LocalDate today)
    {
        if (entry.Date > today)
            throw new RefusedException(RefusalKind.InFuture,
                $"{Dates.Text(entry.Date)} is later than today, {Dates.Text(today)}; date it today or earlier");
        if (entry.Date.Year < 1900)
            throw new RefusedException(RefusalKind.NotAccepted,
                $"{Dates.Text(entry.Date)} is too long ago; dates start with 1900");
        Require.That(entry.Note.Length <= LongestNote,
            $"the note has {entry.Note.Length} characters; at most {LongestNote} are kept; shorten it");
    }
}
