namespace Ledger.Storage.Deriving;

/// <summary>An entry as it was said, in full.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="About">The key of the entry that it takes back or amends; null for all others.</param>
/// <param name="Name">What it defines; null for what happens.</param>
/// <param name="Date">Its day, as it was said first.</param>
/// <param name="Ord">Its place among the entries of its day: it grows with the time of recording.</param>
/// <param name="RecordedAt">When it was recorded, to the microsecond; no two are the same.</param>
/// <param name="Json">The entry as a document.</param>
/// <param name="Digest">What proves it and all that was said before it.</param>
internal sealed record Said(
    string Key, string Kind, string? About, string? Name, string Date, long Ord, string RecordedAt,
    string Json, string Digest)
{
    /// <summary>Whether it is about another entry and moves nothing itself.</summary>
    public bool IsAct => About is not null;
}

/// <summary>Where an entry stands among all: by its day, then by its place in it.</summary>
/// <param name="Date">Its day.</param>
/// <param name="Ord">Its place in the day.</param>
internal readonly record struct Position(string Date, long Ord) : IComparable<Position>
{
    /// <summary>Before everything.</summary>
    public static Position Start { get; } = new("", 0);

    public int CompareTo(Position other) =>
        string.CompareOrdinal(Date, other.Date) is var byDate && byDate != 0 ? byDate : Ord.CompareTo(other.Ord);

    public static bool operator <(Position one, Position other) => one.CompareTo(other) < 0;

    public static bool operator >(Position one, Position other) => one.CompareTo(other) > 0;

    public static bool operator <=(Position one, Position other) => one.CompareTo(other) <= 0;

    public static bool operator >=(Position one, Position other) => one.CompareTo(other) >= 0;
}
