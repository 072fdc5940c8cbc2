namespace Ledger.Storage.Reading;

/// <summary>
/// What a sheet's fate was at the end of a day, @day: the last one that was said of it by then, and without any the one
/// of its session. Each stands in a
/// query that names the session's row f; the parts are constants, since queries are put together when the program is
/// built.
/// </summary>
internal static class FateSql
{
    private const string Changes =
        """
        FROM fate_change c CROSS JOIN standing_entry ce ON ce.id = c.entry_id
            WHERE c.sheet_id = f.sheet_id AND ce.date <= @day
        ORDER BY ce.date DESC, ce.ord DESC LIMIT 1
        """;

    /// <summary>The fate.</summary>
    public const string Fate = "coalesce((SELECT c.fate " + Changes + "), f.fate)";

    /// <summary>What spoiled it.</summary>
    public const string Cause = "CASE WHEN EXISTS (SELECT 1 " + Changes + ") THEN (SELECT c.cause " + Changes
        + ") ELSE f.cause END";
}
