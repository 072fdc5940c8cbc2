namespace Ledger.Published.Tests;

/// <summary>
/// The method of the largest remainder: arithmetic, results computed from the rule.
/// </summary>
public sealed class LargestRemainderTests
{
    private const string Examples = """
        example                           | total | weights       | parts
        quotas 3.5, 2.1, 1.4              | 7     | 50 30 20      | 4 2 1
        quotas 4.0, 3.5, 2.5: a tie       | 10    | 40 35 25      | 4 4 2
        100.00 among three                | 10000 | 1 1 1         | 3334 3333 3333
        100.00 among seven                | 10000 | 1 1 1 1 1 1 1 | 1429 1429 1429 1429 1428 1428 1428
        """;

    [Fact]
    public void The_parts_are_those_of_the_rule() => Assert.All(Table.Read(Examples), row =>
    {
        var parts = Share.Split((long)row.Number("total"), Numbers(row["weights"]));
        Assert.Equal(Numbers(row["parts"]), parts);
        Assert.Equal((long)row.Number("total"), parts.Sum());
    });

    private static long[] Numbers(string text) =>
        [.. text.Split(' ').Select(number => long.Parse(number, System.Globalization.CultureInfo.InvariantCulture))];
}
