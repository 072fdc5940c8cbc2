using Ledger.App.Commands.Show;
using System.Text;
using Ledger.App.Commands.Files;
using Ledger.App.Commands.Print;
using Ledger.Exchange.Export;
using Ledger.Exchange.Print;
using Ledger.Storage.Files;
using Ledger.Terminal;
using Pages = Ledger.Exchange.Print;

namespace Ledger.App.Screens;

/// <summary>
/// Writes the pages that the screens ask for into a folder of their own, each as HTML for a browser and as plain text
/// for any printer. A page that is written again takes the place of the earlier one.
/// </summary>
/// <param name="ledger">The ledger.</param>
/// <param name="file">The ledger's file, which no page may be written to.</param>
/// <param name="folder">The folder; it is made when the first page is written.</param>
internal sealed class PaperFolder(ILedger ledger, string file, string folder) : IPaper
{
    private Holdings Now => ledger.HoldingsOn(ledger.Today);

    /// <summary>The folder "paper" beside a ledger's file.</summary>
    public static PaperFolder Beside(ILedger ledger, string file) =>
        new(ledger, file, Path.Combine(Path.GetDirectoryName(Path.GetFullPath(file))!, "paper"));

    public string MixingSheet(string plan)
    {
        var holdings = Now;
        if (holdings.Plan(plan) is not { } kept)
            return $"There is no plan {plan} that is still open.";
        return SessionPlanning.Of(kept.Request, holdings, kept.On > ledger.Today ? kept.On : ledger.Today,
            ledger) switch
        {
            Planned planned => Save(Pages.MixingSheet.Of(planned.Plan, kept.Name, holdings.Settings.Style),
                $"mixing-sheet-{kept.Name}"),
            NotPlanned not => $"{kept.Name} cannot be planned: {not.Refusal.Sentence}.",
            var other => throw new InvalidOperationException($"the plan is {other}"),
        };
    }

    public string SleeveLabels(string session, LabelPlace place)
    {
        if (ledger.Session(session, ledger.Today) is not { } held)
            return $"There is no session {session} in the journal.";
        var labels = Pages.SleeveLabels.Of(held, ledger.SheetsOf(session, ledger.Today), Now);
        return labels.Count == 0 ? $"{session} has no negative that needs a sleeve."
            : SaveLabels(labels, LabelSheet.Small, place, Pages.SleeveLabels.Page, $"sleeve-labels-{session}");
    }

    public string BottleLabel(string what, LabelPlace place)
    {
        var labels = Pages.BottleLabel.Named(what, Now).ToList();
        return labels.Count == 0 ? $"There is no bottle, bath or jug {what} in use."
            : SaveLabels(labels, LabelSheet.Large, place, Pages.BottleLabel.Page, $"label-{what}");
    }

    public string BoxLabel(string box, LabelPlace place)
    {
        var holdings = Now;
        if (holdings.Film.ExposedBox(box) is not { } known || holdings.Item(known.Item) is not { } film)
            return $"There is no box of exposed sheets {box}.";
        var label = Pages.BoxLabel.Of(film, known.Group, holdings.Film.At(known.Place).Count(), ledger.Today);
        return SaveLabels([label], LabelSheet.Large, place, Pages.BoxLabel.Page, $"box-label-{box}");
    }

    public IReadOnlyList<string> LabelPapers { get; } = [LabelPlace.Plain.Paper, .. LabelPlacing.Papers.Keys];

    public IReadOnlyList<string> LabelGrids(string paper) => !LabelPlacing.Papers.TryGetValue(paper, out var known) ? []
        : [.. LabelSheet.Common.Where(sheet => sheet.Paper == known).Select(sheet => sheet.Grid)];

    public string? LabelProblem(LabelPlace place)
    {
        try
        {
            var placing = Placing(place);
            placing.Copied([]);
            placing.On(LabelSheet.Large, []);
            return null;
        }
        catch (FormatException wrong)
        {
            return wrong.Message;
        }
    }

    public string TallySlip(string bath)
    {
        var holdings = Now;
        return holdings.Bath(bath) is not { } known ? $"There is no bath {bath} in use."
            : Save(
                Pages.TallySlip.Of(
                    new BathReading(known, ledger.Today), holdings.ItemsOf(ItemKind.Film), holdings.Settings.Style),
                $"tally-slip-{known.Code}");
    }

    public string Trace(string what) => ledger.Named(what, ledger.Today) is not { Count: > 0 } start
        ? $"There is nothing called {what}."
        : Save(
            TracePage.Of(new(what, start, ledger, bath => ledger.Bath(bath, ledger.Today), ledger.Today),
                Now.Settings.Style), $"trace-{what}");

    public string CheckList(string what) => ledger.Named(what, ledger.Today) is not { Count: > 0 } start
        ? $"There is nothing called {what}."
        : Save(Pages.CheckList.Of(new(what, start, ledger, Now, null)), $"check-list-{what}");

    public string Sheets(string words) => Found(words) is { Count: > 0 } found
        ? Save(TracePage.Of(words.Length > 0 ? $"Sheets: {words}" : "Sheets", found), SheetsName(words))
        : NoSheet;

    public string SheetsCsv(string words)
    {
        if (Found(words) is not { Count: > 0 } found)
            return NoSheet;
        var path = PathOf(SheetsName(words)) + ".csv";
        return Written("The CSV", () =>
        {
            WholeFile.Write(file, path, stream =>
            {
                using var text = new StreamWriter(stream, leaveOpen: true);
                TableFile.WriteCsv(TraceShape.Card, found, View.OfNone, text);
            });
            return $"{Counted.Of(found.Count, "sheet")} as CSV for a spreadsheet: {path}";
        });
    }

    public string WallCard() => Save(Pages.WallCard.Of(Now), "wall-card");

    public string Csv(IReadOnlyList<string> headings, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        using var text = new StringWriter();
        CsvTable.Write(text, headings, rows);
        return text.ToString();
    }

    public (bool IsKept, string Sentence) Keep(string text, string path)
    {
        try
        {
            var full = Path.GetFullPath(path);
            if (Path.Exists(full))
                return (false, $"{full} is there already; name another file.");
            WholeFile.Write(file, full, stream => stream.Write(Encoding.UTF8.GetBytes(text)));
            return (true, $"It lies in {full}.");
        }
        catch (Exception trouble) when (trouble is RefusedByCommandException or IOException
            or UnauthorizedAccessException or ArgumentException)
        {
            return (false, $"{path} could not be written: {FileTrouble.Reason(trouble)}");
        }
    }

    private const string NoSheet = "No sheet is like that.";

    private List<SheetCard> Found(string words)
    {
        var search = new SheetSearch { Words = [.. words.Split(' ', StringSplitOptions.RemoveEmptyEntries)] };
        return [.. ledger.Cards(search, ledger.Today).Where(search.Finds)];
    }

    private static string SheetsName(string words) => words.Length > 0 ? $"sheets-{words}" : "sheets";

    private string PathOf(string name) =>
        Path.Combine(folder,
            string.Concat(name.Select(c => char.IsLetterOrDigit(c) || c is '-' or '+' or '.' ? c : '-')));

    /// <summary>Labels lie where it was said; what has no room there is told, not cut off.</summary>
    private string SaveLabels(
        IReadOnlyList<Label> labels, LabelSheet plain, LabelPlace place,
        Func<IReadOnlyList<Label>, LabelSheet, PrintedPage> page, string name)
    {
        try
        {
            var placing = Placing(place);
            var all = placing.Copied(labels);
            return Save(page(all, placing.On(plain, all)), name);
        }
        catch (FormatException wrong)
        {
            return $"The labels could not be written: {wrong.Message}.";
        }
    }

    private static LabelPlacing Placing(LabelPlace place) => new(
        LabelPlacing.Papers.GetValueOrDefault(place.Paper),
        place.Grid.Length > 0 ? LabelLengths.Grid(place.Grid) : null,
        place.Margins.Length > 0 ? LabelLengths.Pair(place.Margins) : null,
        place.Gaps.Length > 0 ? LabelLengths.Pair(place.Gaps) : null, place.Copies, place.Used);

    private string Save(PrintedPage page, string name) => Written(page.Title, () =>
    {
        var path = PathOf(name);
        PageFile.WriteHtml(page, file, path + ".html");
        PageFile.WritePlain(page, file, path + ".txt");
        return $"{page.Title}: {path}.html for a browser to print, and .txt beside it for any printer.";
    });

    private string Written(string what, Func<string> write)
    {
        try
        {
            Directory.CreateDirectory(folder);
            return write();
        }
        catch (Exception trouble) when (trouble is RefusedByCommandException or IOException
            or UnauthorizedAccessException)
        {
            return $"{what} could not be written: {FileTrouble.Reason(trouble)}";
        }
    }
}
