namespace Ledger.Core.Journal.Kinds;

/// <summary>What became of reading a text: a value, or what would have been accepted.</summary>
/// <param name="IsRead">Whether it was read.</param>
/// <param name="Value">The value.</param>
/// <param name="Accepted">What is accepted, continuing "accepted is"; empty when it was read.</param>
public readonly record struct Parsed<T>(bool IsRead, T Value, string Accepted)
{
    /// <summary>It was read.</summary>
    public static implicit operator Parsed<T>(T value) => new(true, value, "");
}

/// <summary>What was not read.</summary>
public static class Parsed
{
    /// <summary>It could not be read; this is accepted.</summary>
    public static Parsed<T> Not<T>(string accepted) => new(false, default!, accepted);
}
