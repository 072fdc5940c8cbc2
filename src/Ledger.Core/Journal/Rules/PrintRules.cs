using Ledger.Core.Baths;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// A print session: paper leaves its box, its area and that of the strips passes through the baths for paper, never
/// through one for film.
/// </summary>
internal static class PrintRules
{
    private const int MostSheets = 1000;

    public static void Post(PrintSession session, Draft draft)
    {
        var name = Require.Name(session.Session, "a print session");
        if (draft.Past.HasPrintSession(name))
            throw new RefusedException(
                RefusalKind.AlreadyThere,
                $"print session {name} is in the journal already; give this one another name");
        Require.That(session.Lines.Count > 0, "a print session needs at least one line of paper");
        var fixer = Fixer(session.Bath, draft);
        if (session.Bath is null && fixer is not null)
            draft.Complete(session with { Bath = fixer.Code });
        var negatives = NamedSheets.In(session.Negatives, draft);
        draft.Add(new PrintSessionHeld(name, fixer?.Place));
        for (var i = 0; i < negatives.Count; i++)
            draft.Add(new NegativePrinted(i + 1, negatives[i].Id));
        var (area, weighted) = (Area.Zero, Area.Zero);
        for (var i = 0; i < session.Lines.Count; i++)
        {
            var printed = Print(i + 1, session.Lines[i], draft);
            area += printed;
            weighted += printed.Weighted(draft.Item(session.Lines[i].Item).FixerFactorThousandths);
        }

        foreach (var bath in Baths(fixer, draft))
            BathPass.Through(bath, area, weighted, draft);
        var (sheets, strips) = (session.Lines.Sum(line => line.Sheets), session.Lines.Sum(line => line.Strips));
        draft.Summary = $"print session {name}: {new Quantity(sheets, Unit.Sheet)}, {Counted.Of(strips, "strip")}, "
            + $"{area.ToText(draft.Style)}{(fixer is null ? "" : $" through {fixer.Code}")}"
            + (negatives.Count == 0 ? "" : $", of {NamedSheets.Text(negatives)}");
    }

    private static Area Print(int number, PrintLine line, Draft draft)
    {
        var paper = draft.Item(line.Item);
        if (!paper.IsPaper)
            throw new RefusedException(RefusalKind.WrongMaterial,
                $"{paper.Code} is not paper; record film with `record session`");
        Require.That(
            line.Sheets is >= 0 and <= MostSheets,
            $"the sheets of {paper.Code} must be from 0 to {MostSheets}, not {line.Sheets}");
        Require.That(
            line.Strips is >= 0 and <= MostSheets,
            $"the strips of {paper.Code} must be from 0 to {MostSheets}, not {line.Strips}");
        Require.That(line.Sheets + line.Strips > 0,
            $"the line of {paper.Code} has neither sheets nor strips; say how many");
        Require.That(line.StripsPerSheet is >= 2 and <= 100,
            $"a sheet is cut into 2 to 100 strips, not {line.StripsPerSheet}");
        var area = line.Strips == 0
            ? paper.AreaOf(line.Sheets)
            : Area.FromHundredths(Share.UpTo(paper.AreaOf(1).Hundredths, line.Strips, line.StripsPerSheet));
        var cost = line.Sheets == 0
            ? Money.Zero
            : new(draft.Take(paper, paper.Of(line.Sheets), line.Container, Places.Prints, booksDifference: false)
                .Sum(draw => draw.Cost.Millionths));
        draft.Add(new PaperPrinted(number, paper.Code, line.Sheets, line.Strips, area, cost,
            line.Purpose, line.Note.Trim()));
        return area;
    }

    private static Bath? Fixer(string? named, Draft draft)
    {
        if (named is { Length: > 0 })
        {
            var bath = draft.Bath(named);
            if (bath.Suspicion is { } suspicion && suspicion.Since <= draft.Date)
                throw RefusedException.Suspect($"bath {bath.Code}", suspicion, bath.Code);
            return bath.Material == BathMaterial.Paper ? bath : throw new RefusedException(
                RefusalKind.WrongMaterial, $"bath {bath.Code} is for film; paper never goes through it");
        }

        var fixers = ForPaper(draft).Where(bath => bath.Role == ItemRole.Fixer).ToList();
        Require.That(fixers.Count > 0, "no fixer for paper is in use: mix one with --material paper first");
        Require.That(fixers.Count == 1,
            $"say which fixer the paper went through: {string.Join(", ", fixers.Select(bath => bath.Code))}");
        return fixers[0];
    }

    /// <summary>The fixer, and every other bath for paper that counts its work: developer, stop, wash aid.</summary>
    private static IEnumerable<Bath> Baths(Bath? fixer, Draft draft) =>
        new[] { fixer }.OfType<Bath>()
            .Concat(ForPaper(draft).Where(bath => bath.Role != ItemRole.Fixer && bath.Place != fixer?.Place));

    private static IEnumerable<Bath> ForPaper(Draft draft) =>
        draft.Holdings.WorkingBaths.Where(bath => bath.Material == BathMaterial.Paper && bath.MixedOn <= draft.Date
            && !(bath.Suspicion?.Since <= draft.Date));
}
