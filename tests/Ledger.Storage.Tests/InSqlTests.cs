namespace Ledger.Storage.Tests;

/// <summary>What statements name is what the trade's lists say.</summary>
public sealed class InSqlTests
{
    [Fact]
    public void Statements_name_the_places_and_fates_of_the_trade()
    {
        Assert.Equal(
            [
                Places.Supplier, Places.FiledNegatives, Places.Rejects, Places.UsedUp, Places.LostOrGained,
                Places.Discarded, Places.Mixing, Places.Prints,
            ],
            new[]
            {
                InSql.Supplier, InSql.FiledNegatives, InSql.Rejects, InSql.UsedUp, InSql.LostOrGained,
                InSql.Discarded, InSql.Mixing, InSql.Prints,
            }.Select(number => new PlaceId(long.Parse(number, System.Globalization.CultureInfo.InvariantCulture))));
        Assert.Equal(InSql.Dummy, $"'{Fate.Dummy.Name()}'");
        Assert.Equal(InSql.OfPictures,
            string.Join(", ", new[] { Fate.Negative, Fate.Keeper, Fate.Reject }.Select(fate => $"'{fate.Name()}'")));
    }

    /// <summary>
    /// SQLite takes an index of some rows only where the statement names them as the index does; otherwise it refuses
    /// the statement below, and costs would walk over all that sessions used.
    /// </summary>
    [Fact]
    public void What_came_from_outside_is_found_by_its_index()
    {
        using var file = new TemporaryLedger();
        Some.Stock(file);
        Assert.InRange(
            file.Ledger.Connection.Number(
                $"""
                SELECT count(*) FROM entry e CROSS JOIN movement m INDEXED BY movement_outside ON m.entry_id = e.id
                WHERE m.to_place IN ({InSql.OutsideUse}) OR m.from_place IN ({InSql.OutsideUse})
                """),
            1, long.MaxValue);
    }

    /// <summary>
    /// No statement outside of the migrations names a single place by its number, or a fate, by itself.
    /// </summary>
    [Fact]
    public void No_statement_names_them_otherwise()
    {
        var source = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..",
            "src", "Ledger.Storage"));
        var literal = new System.Text.RegularExpressions.Regex(
            @"(to_place|from_place|place_id) (IN \(|= )[0-9]\b|'(negative|keeper|reject|dummy|practice)'");
        Assert.Empty(Directory.EnumerateFiles(source, "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.EndsWith("InSql.cs", StringComparison.Ordinal)
                && !file.Contains("/obj/", StringComparison.Ordinal))
            .SelectMany(file => File.ReadLines(file).Where(line => literal.IsMatch(line))
                .Select(line => $"{Path.GetFileName(file)}: {line.Trim()}")));
    }

    private static string Here([System.Runtime.CompilerServices.CallerFilePath] string here = "") => here;
}
