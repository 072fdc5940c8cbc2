using Ledger.Core.Measures;

namespace Ledger.Core.Baths;

/// <summary>How long a strip of film took to clear in a fixer.</summary>
/// <param name="Date">The day of the test.</param>
/// <param name="Film">The film's code.</param>
/// <param name="Tenths">The time, in tenths of a second.</param>
/// <param name="IsFresh">Whether it is the baseline: measured in a fresh bath.</param>
/// <param name="Worked">The weighted area that had passed through the bath before it.</param>
/// <param name="FreshTenths">The fresh time of the same film that it is measured against; null when there is none
/// yet.</param>
public sealed record ClearingTime(LocalDate Date, string Film, int Tenths, bool IsFresh, Area Worked, int? FreshTenths)
{
    /// <summary>The time in seconds.</summary>
    public decimal Seconds => Tenths / 10m;

    /// <summary>The fresh time in seconds.</summary>
    public decimal? FreshSeconds => FreshTenths / 10m;

    /// <summary>How many times the fresh time it took; null without a baseline.</summary>
    public decimal? Ratio => FreshTenths is > 0 ? (decimal)Tenths / FreshTenths : null;

    /// <summary>Whether it took so many times the fresh time, or longer.</summary>
    public bool IsExhaustedAt(int multipleThousandths) =>
        FreshTenths is { } fresh && Tenths * 1000L >= (long)fresh * multipleThousandths;

    /// <summary>How long to fix this film, in tenths of a second, rounded up.</summary>
    public long FixingTenths(int multipleThousandths) => Share.UpTo(Tenths, multipleThousandths, 1000);
}
