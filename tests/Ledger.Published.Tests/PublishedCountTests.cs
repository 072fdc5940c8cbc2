using System.Reflection;

namespace Ledger.Published.Tests;

/// <summary>How many published values hold the program to its figures.</summary>
public sealed class PublishedCountTests(ITestOutputHelper output)
{
    private const BindingFlags All = BindingFlags.Static | BindingFlags.Instance | BindingFlags.Public
        | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;

    private static readonly List<(MemberInfo Member, PublishedAttribute Published)> Members =
    [
        .. typeof(PublishedCountTests).Assembly.GetTypes().SelectMany(type => type.GetMembers(All))
            .SelectMany(member => member.GetCustomAttributes<PublishedAttribute>()
                .Select(published => (member, published))),
    ];

    /// <summary>Each printed cell of a table counts, and each printed value that a test says it checks.</summary>
    [Fact]
    public void At_least_300_distinct_published_values_are_checked_even_without_the_largest_table()
    {
        var count = Members.Sum(Values);
        Console.WriteLine(
            $"Published values that are checked: {count}, from "
                + $"{Members.Select(one => one.Published.Source).Distinct().Count()} sources");
        output.WriteLine($"{count} published values");
        Assert.True(count >= 300, $"only {count}");
        var largest = Members.Max(Values);
        Assert.True(count - largest >= 300, $"only {count - largest} without the largest table");
    }

    [Fact]
    public void Every_source_names_a_title_and_when_or_where_it_stands() => Assert.All(Members, one =>
    {
        Assert.True(one.Published.Source.Length >= 20 && one.Published.Source.Any(char.IsDigit),
            $"{one.Member.Name}: {one.Published.Source}");
        Assert.True(one.Member is FieldInfo ? one.Published.Columns.Length > 0 : one.Published.Values > 0,
            $"{one.Member.Name} counts nothing");
    });

    private static int Values((MemberInfo Member, PublishedAttribute Published) one) =>
        one.Member is FieldInfo table ? Cells(table, one.Published) : one.Published.Values;

    private static int Cells(FieldInfo table, PublishedAttribute published)
    {
        var columns = published.Columns.Split(',', StringSplitOptions.TrimEntries);
        return Table.Read((string)table.GetRawConstantValue()!).SelectMany(row => columns.Select(column => row[column]))
            .Count(cell => cell.Length > 0 && cell != "-");
    }
}
