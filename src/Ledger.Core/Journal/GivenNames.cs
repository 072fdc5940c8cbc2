namespace Ledger.Core.Journal;

/// <summary>
/// The names that an entry gave: containers, sheets, negatives. A name stays with what it names through every change of
/// the entry, and is never given again, so it is kept by what it was given for (<see cref="GivenName.Slot"/>) and found
/// there when the entry is decided once more.
/// </summary>
public sealed class GivenNames
{
    private readonly Dictionary<string, long> _numbers = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>No name was given yet.</summary>
    public GivenNames()
    {
    }

    /// <summary>The names that an entry gave earlier.</summary>
    public GivenNames(IEnumerable<GivenName> names)
    {
        foreach (var name in names)
            _numbers[name.Slot] = name.Number;
    }

    /// <summary>The number that was given for something; null when none was.</summary>
    public long? Find(string slot) => _numbers.TryGetValue(slot, out var number) ? number : null;
}

/// <summary>A name that an entry gave.</summary>
/// <param name="Slot">What it was given for, within the entry: the third sheet of its second line, the side that a
/// sheet was loaded into.</param>
/// <param name="Series">What it counts: the containers of an item, all sheets, the negatives of a year.</param>
/// <param name="Number">Its running number in the series, from 1 on.</param>
public sealed record GivenName(string Slot, string Series, long Number)
{
    /// <summary>The series of all sheets.</summary>
    public const string Sheets = "sheet";

    /// <summary>The series of an item's containers.</summary>
    public static string Containers(string item) => $"container {item}";

    /// <summary>The series of a year's negatives; year 0 where the user's pattern has none.</summary>
    public static string Negatives(int year) => $"negative {year}";
}
