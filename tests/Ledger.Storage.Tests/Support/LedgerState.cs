using System.Text.RegularExpressions;
using Ledger.Storage.Upkeep;

namespace Ledger.Tests;

/// <summary>What a ledger holds, to be compared.</summary>
internal static partial class LedgerState
{
    /// <summary>
    /// All that follows from what was said, row by row. The journal's heads of undos and amendments, and when each
    /// entry was recorded, are left out: they tell how a state came about.
    /// </summary>
    public static IReadOnlyList<string> Of(LedgerFile ledger) =>
    [
        .. new Comparison(ledger.Connection).Dump(ledger.Connection)
            .Where(row => !IsHead(row) || !(row.Contains("kind undo", StringComparison.Ordinal)
                || row.Contains("kind amendment", StringComparison.Ordinal)))
            .Select(row => IsHead(row) ? HowItCame().Replace(row, "") : row),
    ];

    /// <summary>The same without the heads of all entries: what was taken back keeps its head.</summary>
    public static IEnumerable<string> WithoutHeads(LedgerFile ledger) => Of(ledger).Where(row => !IsHead(row));

    private static bool IsHead(string row) => row.StartsWith("entry: ", StringComparison.Ordinal);

    [GeneratedRegex(", (recorded_at|ord) [^,]*")]
    private static partial Regex HowItCame();
}
