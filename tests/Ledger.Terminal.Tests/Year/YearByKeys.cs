namespace Ledger.Terminal.Tests.Year;

/// <summary>
/// The keys that record an entry: which screen, which letter, what goes into which field. An entry that has no form
/// here is an error, so that nothing of the year is left out in silence.
/// </summary>
/// <param name="typist">Who presses them.</param>
/// <param name="ledger">The ledger that they go to, for the units of its items.</param>
internal sealed class YearByKeys(Typist typist, ILedger ledger)
{
    private readonly Dictionary<string, long> _numbers = [];

    public void Type(Entry entry)
    {
        Press(entry);
        _numbers[entry.Key] = LastNumber;
    }

    private long LastNumber => ledger.Journal(ledger.Today, null, 1)[0].Number;

    private void Press(Entry entry)
    {
        typist.IsSo = entry.Anyway;
        switch (entry)
        {
            case ItemDefinition definition: ItemByKeys.Type(definition.Item, typist); break;
            case ProcessDefinition definition: Type(definition); break;
            case HolderDefinition definition: Type(definition); break;
            case Delivery delivery: Type(delivery); break;
            case Opening opening: Type(opening); break;
            case StorageMove move: Type(move); break;
            case ExposureIndexSetting rating: Type(rating); break;
            case Decanting decanting: Type(decanting); break;
            case StockCount count:
                typist.On("2c").Fill(("What", count.What), ("Found", Text(count.Found.Value)),
                    ("Reason", count.Reason), ("Note", count.Note));
                break;
            case Discard discard: Type(discard); break;
            case Cleaning cleaning:
                typist.On("7").Find("clean").Fill(
                    ("Bagged", Tick(cleaning.IsBagged)), ("Holders", string.Join(' ', cleaning.Holders)),
                    ("Note", cleaning.Note));
                break;
            case Load load:
                typist.On("7l").Fill(
                    ("Sides", string.Join(' ', load.Sides)), ("Film or box", load.From), ("Note", load.Note));
                break;
            case ExposureNote note:
                typist.On("7x").Fill(
                    ("Group", note.Group), ("Sides", string.Join(' ', note.Sides)), ("Subject", note.Subject),
                    ("Note", note.Note));
                break;
            case Unload unload:
                typist.On("7m").Fill(
                    ("From", string.Join(", ", unload.From)), ("Other group", unload.Group),
                    ("Back into", unload.To ?? ""), ("Note", unload.Note));
                break;
            case SideService service:
                typist.On("7").Find("service").Fill(
                    ("Back in service", Tick(service.IsInService)), ("Sides", string.Join(' ', service.Sides)),
                    ("Reason", service.Reason), ("Note", service.Note));
                break;
            case KeeperNaming keeper: typist.On("7k").Fill(("Negative", keeper.Negative), ("Note", keeper.Note)); break;
            case BathMixing mixing: Type(mixing); break;
            case Rotation rotation: Type(rotation); break;
            case ClearingTest test: Type(test); break;
            case JugStart start: AtJugs("n", ("Jug", start.Jug), ("Holds, ml", Text(start.Size.Millilitres)),
                ("For", start.Contents)); break;
            case JugFilling filling:
                AtJugs("a", ("Jug", filling.Jug), ("Volume, ml", Text(filling.Volume.Millilitres)),
                    ("What", filling.What));
                break;
            case JugHandover over: typist.Find("hand over").Fill(("Jug", over.Jug), ("To", over.To)); break;
            case SessionLog session: SessionByKeys.Type(session, typist); break;
            case PrintSession session: SessionByKeys.Type(session, typist); break;
            case OrderPlacement order: Type(order); break;
            case PriceRiseNotice rise:
                typist.On("8").Find("price rise").Fill(
                    ("Item", rise.Item), ("Percent more", Text(rise.Percent)), ("From", Dates.Text(rise.From)),
                    ("Note", rise.Note));
                break;
            case PlannedSession plan: Type(plan); break;
            case Undo undo: Type(undo); break;
            default: throw new InvalidOperationException($"no keys are known for a {entry.Kind}");
        }
    }

    private void Type(ProcessDefinition definition)
    {
        typist.Find("processes");
        foreach (var step in definition.Steps)
            typist.On("n").Fill(
                ("Process", definition.Process), ("Step", $"{step.Number}"), ("what", step.Role.Name()),
                ("Item", step.Item ?? ""), ("Dilution", step.Dilution?.Text ?? ""),
                ("or amount", Text(step.Amount?.Value)), ("In ml", Text(step.WorkingVolume?.Millilitres)),
                ("formats", step.VolumesByFormat?.Text ?? ""), ("Use", step.Use.Name()), ("Per", step.Per.Name()),
                ("Minutes", Text(step.Minutes)), ("°C", Text(step.Celsius)), ("Note", step.Note));
        typist.Press(Key.Esc, Key.Esc);
    }

    private void Type(HolderDefinition holder) => typist.On("7n").Fill(
        ("Holder", holder.Holder), ("Format", holder.Format.Code), ("Sides", string.Join('/', holder.Sides)),
        ("Flap notches", holder.Notch), ("Bought", Text(holder.BoughtOn)), ("Note", holder.Note));

    private void Type(Delivery delivery)
    {
        var line = delivery.Lines.Single();
        typist.On("1r").Fill(
            ("Item", line.Item), ("Packs", Text(line.Packs)), ("Price of a pack", Text(line.Price ?? Money.Zero)),
            ("Discount on all", Text(delivery.Discount)), ("Shipping", Text(delivery.Shipping)),
            ("Duty and tax", Text(delivery.Duty)), ("Currency", delivery.Currency ?? ""), ("Rate", Text(delivery.Rate)),
            ("Batch", line.Batch), ("Expiry date", Text(line.ExpiresOn)), ("Kept in", line.Storage),
            ("Order", line.Order ?? ""), ("Invoice", delivery.Reference), ("Note", delivery.Note));
    }

    private void Type(Opening opening) => typist.On("2o").Fill(
        ("What", opening.Container), ("Batch", opening.Batch), ("Envelopes", Text(opening.Envelopes)),
        ("Note", opening.Note));

    private void Type(StorageMove move)
    {
        Boxes(move.Container);
        typist.On("m").Fill(
            ("What", move.Container), ("Kept in", move.To), ("not opened before", Text(move.OpensFrom)),
            ("Note", move.Note));
        typist.Press(Key.Esc);
    }

    private void Type(ExposureIndexSetting rating)
    {
        Boxes(rating.Container);
        typist.On("i").Fill(("Box", rating.Container), ("Exposed at EI", $"{rating.ExposureIndex}"),
            ("Note", rating.Note));
        typist.Press(Key.Esc);
    }

    /// <summary>Goes down the shelf to an item and opens its boxes.</summary>
    private void Boxes(string container)
    {
        var items = ledger.HoldingsOn(ledger.Today).Items.Select(item => item.Code).ToList();
        typist.On("2").Press(Key.Home);
        for (var row = items.IndexOf(container.Split('/')[0]); row > 0; row--)
            typist.Press(Key.CursorDown);
        typist.Press(Key.Enter);
    }

    private void Type(Decanting decanting) => typist.On("2f").Fill(
        ("From", decanting.From), ("Bottles", $"{decanting.Bottles.Count}"),
        ("Each holds, ml", Text(decanting.Bottles[0].Size.Value)),
        ("In the last, ml", Text(decanting.Bottles[^1].Amount?.Value)),
        ("Names", string.Join(' ', decanting.Bottles.Select(bottle => bottle.Name))), ("Note", decanting.Note));

    private void Type(Discard discard)
    {
        var isBath = ledger.HoldingsOn(ledger.Today).Bath(discard.What) is not null;
        IReadOnlyList<(string, string)> to = discard.To is { } place ? [("Or handed to", place)] : [];
        typist.On(isBath ? "3d" : "2d").Fill([
            ("What", discard.What),
            isBath ? ("Into jug", discard.Jug ?? "") : ("How much", Text(discard.Quantity?.Value)),
            .. to, ("Reason", discard.Reason), ("Note", discard.Note),
        ]);
    }

    private void Type(BathMixing mixing) => typist.On("1b").Fill(
        ("Bath", mixing.Bath), ("Mixed from", mixing.Item), ("Made, ml", Text(mixing.WorkingVolume.Millilitres)),
        ("Dilution", mixing.Dilution?.Text ?? ""), ("Measured out", Text(mixing.Amount?.Value)),
        ("For", mixing.Material.Name()), ("Second after", mixing.PairedWith ?? ""),
        ("Capacity, sq in/litre", Text(mixing.Capacity?.PerLitre.SquareInches)),
        ("Basis", mixing.Capacity?.Basis ?? ""), ("Note", mixing.Note));

    private void Type(Rotation rotation) => typist.On("3").Find("rotate").Fill(
        ("Pair of", rotation.Bath ?? ""), ("New bath", rotation.NewBath),
        ("Made, ml", Text(rotation.WorkingVolume?.Millilitres)), ("Dilution", rotation.Dilution?.Text ?? ""),
        ("Measured out", Text(rotation.Amount?.Value)), ("Into jug", rotation.Jug ?? ""), ("Reason", rotation.Reason),
        ("Note", rotation.Note));

    private void Type(ClearingTest test) => typist.On("3t").Fill(
        ("Bath", test.Bath), ("Film", test.Film), ("Cleared in, seconds", Text(test.Seconds)),
        ("The bath is fresh", Tick(test.IsFresh)), ("Sheets cut up", test.Sheets == 0 ? "" : $"{test.Sheets}"),
        ("Note", test.Note));

    private void AtJugs(string key, params (string Label, string Text)[] answers)
    {
        typist.Find("waste jugs").On(key).Fill(answers);
        typist.Press(Key.Esc);
    }

    private void Type(OrderPlacement order)
    {
        var line = Assert.Single(order.Lines);
        typist.On("8n").Fill(
            ("Order", order.Order), ("Item", line.Item), ("Packs", $"{line.Packs}"),
            ("Price of a pack", Text(line.Price)), ("Expected", Text(line.ExpectedOn)),
            ("Back-ordered", Tick(line.IsBackOrdered)), ("Prepaid", Tick(order.IsPrepaid)),
            ("From", order.Supplier), ("Note", order.Note));
    }

    private void Type(PlannedSession plan)
    {
        typist.On("1pn").Press([.. Enumerable.Repeat(Key.F4, plan.Request.Sheets.Count - 1)]);
        typist.Fill(
        [
            ("Plan", plan.Plan), ("for", Dates.Text(plan.On)), ("as", plan.IsTrip ? "trip" : "session"),
            ("Process", plan.Request.Process), ("Minutes", plan.Request.Times.Text), ("Bath", plan.Request.Bath ?? ""),
            ("Note", plan.Note),
            .. plan.Request.Sheets.SelectMany(line => new[]
            {
                ("Film", line.Film), ("Sheets", $"{line.Count}"), ("Group", line.Group), ("Holder", line.Holder),
                ("Subject", line.Subject),
            }),
        ]);
        typist.Press(Key.Esc);
    }

    private void Type(Undo undo)
    {
        typist.On("6").Press(Key.Home);
        for (var back = LastNumber - _numbers[undo.Reference!]; back > 0; back--)
            typist.Press(Key.CursorDown);
        typist.On("u").Fill(("Reason", undo.Reason), ("Note", undo.Note));
    }

    internal static string Text(decimal? number) => number is { } known ? Scaled.ToText(known, 6) : "";

    private static string Text(Money money) => money == Money.Zero ? "" : Text(money.Amount);

    private static string Text(LocalDate? date) => date is { } day ? Dates.Text(day) : "";

    private static string Tick(bool isTicked) => isTicked ? "yes" : "";
}
