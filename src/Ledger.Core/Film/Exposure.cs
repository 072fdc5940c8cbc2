namespace Ledger.Core.Film;

/// <summary>What is written down when a sheet is exposed: it takes seconds, or it is not written down at all.</summary>
/// <param name="Date">The day.</param>
/// <param name="Group">How it will be developed: N, N+1, N-1…</param>
/// <param name="Subject">What is on the picture; may be empty.</param>
public sealed record Exposure(LocalDate Date, string Group, string Subject)
{
    /// <summary>The group of what is developed as usual.</summary>
    public const string Normal = "N";
}
