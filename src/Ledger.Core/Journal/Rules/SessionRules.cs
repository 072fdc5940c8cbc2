using Ledger.Core.Baths;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// A session: sheets leave their boxes, developer and supplies are used up, the area passes through the bath.
/// </summary>
internal static class SessionRules
{
    private const int MostSheets = 1000;

    public static void Post(SessionLog session, Draft draft)
    {
        var name = Require.Name(session.Session, "a session");
        if (draft.Past.HasSession(name))
            throw new RefusedException(RefusalKind.AlreadyThere,
                $"session {name} is in the journal already; give this one another name");
        var process = draft.Holdings.Process(session.Process)?.Knowing(draft.Item)
            ?? throw RefusedException.Unknown($"process \"{session.Process}\"",
                draft.Holdings.Processes.Select(known => known.Name));
        session = Measured(session, process, draft);
        Require.That(
            session.Lines.Any(line => line.Fate != Fate.Dummy),
            "a session needs at least one line of sheets that are no dummies");
        var films = session.Lines.Select(line => Film(line, draft)).ToList();

        draft.DrawFirst = session.DrawFirst;
        var area = Total(session, films, weighted: false);
        var weighted = Total(session, films, weighted: true);
        var bath = PassThrough(session, process, area, weighted, draft);
        var developer = Develop(session, process, films, draft);
        draft.Add(new SessionHeld(name, process, bath?.Place, developer));
        var batches = new LoggedBatches(session, films);
        var developed = new DevelopedSheets(batches, draft);
        for (var i = 0; i < films.Count; i++)
            developed.Take(i + 1, session.Lines[i], films[i]);
        draft.Film.RemindOfLabels();
        foreach (var remark in batches.Remarks(draft.Holdings.Settings.Tray).Concat(batches.Thin(process, draft))
            .Concat(developed.Together()))
            draft.Remark(remark);
        UseUp(session, process, batches.Loads, draft);
        PlanRules.Realise(session, draft);

        var sheets = string.Join(", ", session.Lines.Where(line => line.Fate != Fate.Dummy)
            .GroupBy(line => line.Item, StringComparer.OrdinalIgnoreCase)
            .Select(group => $"{group.Sum(line => line.Sheets)} {draft.Item(group.Key).Code}"));
        draft.Summary =
            $"session {name}: {sheets}, {area.ToText(draft.Style)}{(bath is null ? "" : $" through {bath.Code}")}";
    }

    /// <summary>A syrup that was weighed out is taken by volume, as its density gives it.</summary>
    private static SessionLog Measured(SessionLog session, Process process, Draft draft)
    {
        if (session.Lines.All(line => line.DeveloperWeight is null))
            return session;
        Require.That(process.Developer?.Item is not null,
            $"process {process.Name} has no developer, so none can be used; leave the developer out");
        var developer = draft.Item(process.Developer!.Item!);
        return session with { Lines = [.. session.Lines.Select(line => Measured(line, developer))] };
    }

    private static SessionLine Measured(SessionLine line, Item developer)
    {
        if (line.DeveloperWeight is not { } weight)
            return line;
        Require.That(line.Developer is null, "the developer of a batch is measured or weighed, not both");
        Require.That(
            developer is { Density: not null, Unit: Unit.Millilitre },
            $"{developer.Code} has no density, so it cannot be weighed out: `record item {developer.Code} --density` "
                + "says it");
        return line with { Developer = Volume.FromMicrolitres(developer.Converted(weight)!.Value.Base),
            DeveloperWeight = null };
    }

    private static Item Film(SessionLine line, Draft draft)
    {
        var film = draft.Item(line.Item);
        Require.That(film.Kind == ItemKind.Film,
            $"{film.Code} is a {film.Kind.Name()} and cannot be developed; name a film");
        if (film.IsPaper)
            throw new RefusedException(RefusalKind.WrongMaterial,
                $"{film.Code} is paper; it never goes through the baths of a film session; record it as a print "
                    + "session");
        Require.That(
            line.Sheets is > 0 and <= MostSheets,
            $"the {film.Unit.Plural()} of {film.Code} must be from 1 to {MostSheets}, not {line.Sheets}");
        return film;
    }

    private static Area Total(SessionLog session, List<Item> films, bool weighted)
    {
        var total = Area.Zero;
        for (var i = 0; i < films.Count; i++)
        {
            var area = films[i].AreaOf(session.Lines[i].Sheets);
            total += weighted ? area.Weighted(films[i].FixerFactorThousandths) : area;
        }

        return total;
    }

    /// <summary>
    /// The area passes through a bath of each item that is used again; the session is filed under the first.
    /// </summary>
    private static Bath? PassThrough(SessionLog session, Process process, Area area, Area weighted, Draft draft)
    {
        var choice = new SessionBaths(draft.Holdings, draft.Date);
        var baths = choice.Decided(process, session.Bath);
        if (choice.IsIncomplete(session.Bath, baths))
            draft.Complete((SessionLog)draft.Entry with { Bath = SessionBaths.Typed(baths) });
        foreach (var bath in baths)
            BathPass.Through(bath, area, weighted, draft);
        return baths is [var first, ..] ? first : null;
    }

    private static Volume Develop(SessionLog session, Process process, List<Item> films, Draft draft)
    {
        var said = session.Lines.Any(line => line.Developer is not null);
        if (process.Developer is not { Item: { } code } step)
        {
            Require.That(!said,
                $"process {process.Name} has no developer, so none can be used; leave the developer out");
            return default;
        }

        var item = draft.Item(code);
        var doses = session.Lines.Select((line, i) => Dose(line, films[i], step, item, said)).ToList();
        var total = doses.Aggregate(default(Volume), (sum, dose) => sum + dose.First);
        if (step.Use != StepUse.OneShot || total == default(Volume))
            return total;
        draft.Take(item, Quantity.Of(total), null, Places.UsedUp, session.BooksDifference);
        foreach (var part in doses.SelectMany(dose => dose.Others).Where(part => part.Item is not null)
            .GroupBy(part => part.Item!))
            Take(part.Key, part.Sum(one => one.Measured.Microlitres), session, draft);
        if (OtherPart.Unknown(item, step.Dilution ?? item.Dilution) is { } unknown)
            draft.Remark(unknown);
        return total;
    }

    /// <summary>What a line put into the developer tray: as it says, or as the process asks.</summary>
    private static (Volume First, IReadOnlyList<OtherPart> Others) Dose(SessionLine line, Item film,
        ProcessStep step, Item developer, bool isSaid)
    {
        var first = isSaid ? line.Developer ?? default
            : line.Fate == Fate.Dummy ? default
            : BatchDeveloper.Of(step, developer, film, line.Sheets, graduate: null)?.Measured ?? default;
        var others = step.OthersBeside(developer, Quantity.Of(first));
        if (line.OtherParts.Count == 0)
            return (first, others);
        Require.That(line.Developer is not null,
            "the other parts of a developer are measured out beside its first part; say that too");
        Require.That(
            line.OtherParts.Count == others.Count,
            $"{developer.Code} {step.Dilution ?? developer.Dilution} has {Counted.Of(others.Count, "part")} beside the "
                + "first, "
            + $"and {line.OtherParts.Count} were said");
        return (first, [.. others.Select((part, i) => part with { Measured = line.OtherParts[i] })]);
    }

    private static void Take(string code, long microlitres, SessionLog session, Draft draft)
    {
        if (microlitres > 0)
            draft.Take(draft.Item(code), new(microlitres, Unit.Millilitre), null, Places.UsedUp,
                session.BooksDifference);
    }

    private static void UseUp(SessionLog session, Process process, IReadOnlyList<TrayLoad> batches, Draft draft)
    {
        foreach (var step in process.UsedUp)
        {
            var item = draft.Item(step.Item!);
            foreach (var (code, amount) in step.Drawn(item, batches))
                draft.Take(draft.Item(code), amount, null, Places.UsedUp, session.BooksDifference);
            if (OtherPart.Unknown(item, step.Dilution ?? item.Dilution) is { } unknown)
                draft.Remark(unknown);
        }
    }
}
