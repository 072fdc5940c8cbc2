namespace Ledger.Terminal.Tests.Fakes;

/// <summary>Remembers which pages were asked for.</summary>
internal sealed class FakePaper : IPaper
{
    public List<string> Pages { get; } = [];

    public string MixingSheet(string plan) => Asked($"mixing sheet of {plan}");

    public string SleeveLabels(string session, LabelPlace place) => Asked($"sleeves of {session}{On(place)}");

    public string BottleLabel(string what, LabelPlace place) => Asked($"label of {what}{On(place)}");

    public string BoxLabel(string box, LabelPlace place) => Asked($"seal of {box}{On(place)}");

    public IReadOnlyList<string> LabelPapers => ["plain", "a4"];

    public IReadOnlyList<string> LabelGrids(string paper) => paper == "a4" ? ["3x7", "3x8"] : [];

    public string? LabelProblem(LabelPlace place) =>
        place.IsPlain || LabelGrids(place.Paper).Contains(place.Grid) ? null : $"there is no grid {place.Grid}";

    private static string On(LabelPlace place) =>
        (place.IsPlain ? "" : $" on {place.Paper} {place.Grid}, {place.Used} gone")
            + (place.Copies > 1 ? $", {place.Copies} times" : "");

    public string TallySlip(string bath) => Asked($"tally of {bath}");

    public string Trace(string what) => Asked($"trace of {what}");

    public string CheckList(string what) => Asked($"check list of {what}");

    public string Sheets(string words) => Asked($"list of {words}");

    public string SheetsCsv(string words) => Asked($"CSV of {words}");

    public string WallCard() => Asked("wall card");

    /// <summary>What was kept, by its file.</summary>
    public Dictionary<string, string> Files { get; } = [];

    public string Csv(IReadOnlyList<string> headings, IReadOnlyList<IReadOnlyList<string>> rows) =>
        string.Concat(rows.Prepend(headings).Select(row => string.Join(',', row) + "\r\n"));

    public (bool IsKept, string Sentence) Keep(string text, string path) =>
        Files.TryAdd(path, text) ? (true, $"It lies in {path}.") : (false, $"{path} is there already.");

    private string Asked(string page)
    {
        Pages.Add(page);
        return $"The {page} lies here.";
    }
}
