namespace Ledger.Storage.Reading;

/// <summary>Where a page of what happened begins: the last one first, behind the last row of the page before.</summary>
/// <param name="AsOf">The last day that counts.</param>
/// <param name="BeforeDate">The day of that row; later than any for the first page.</param>
/// <param name="BeforeNumber">The number of its entry; larger than any for the first page.</param>
/// <param name="AtMost">How many rows a page has.</param>
internal sealed record PageAt(string AsOf, string BeforeDate, long BeforeNumber, int AtMost)
{
    /// <summary>The end of a query over entries, called e.</summary>
    public const string Sql = """
        WHERE e.date <= @AsOf AND (e.date, e.ord) < (@BeforeDate, coalesce((SELECT b.ord FROM entry b
            WHERE b.id = @BeforeNumber), 9223372036854775807))
        ORDER BY e.date DESC, e.ord DESC LIMIT @AtMost
        """;

    /// <summary>The page behind a row; the first one behind none.</summary>
    public static PageAt Of(LocalDate asOf, (LocalDate Date, long Number)? before, int atMost) =>
        before is var (date, number)
            ? new(Dates.Text(asOf), Dates.Text(date), number, atMost)
            : new(Dates.Text(asOf), "9999", long.MaxValue, atMost);
}
