namespace Ledger.Exchange.Import.Rows;

/// <summary>
/// What renamed cells said when rows of their kind were first imported. A row's identity is made from it, so that a file that follows the new
/// names adds nothing to a ledger that knows its rows under the old ones.
/// </summary>
internal static class FirstNames
{
    private static readonly (string Kind, string Column, string Now, string First)[] Cells =
    [
        ("processes", "role", "presoak", "soak"),
        ("processes", "role", "final rinse", "last rinse"),
        ("observations", "kind", "residual hypo", "residual fixer"),
    ];

    /// <summary>The references in undone.csv begin with the name of a file.</summary>
    private static readonly (string Now, string First)[] Files =
        [("deliveries:", "purchases:"), ("undone:", "corrections:"), ("exposure_indexes:", "speeds:")];

    /// <summary>What a cell said first.</summary>
    public static string Of(string kind, string column, string text) => kind == "undone" && column == "entry"
        ? Files.Where(file => text.StartsWith(file.Now, StringComparison.Ordinal)).Select(file => file.First + text[file.Now.Length..])
            .FirstOrDefault() ?? text
        : Cells.Where(cell => cell.Kind == kind && cell.Column == column && cell.Now.Equals(text, StringComparison.OrdinalIgnoreCase))
            .Select(cell => cell.First).FirstOrDefault() ?? text;
}
