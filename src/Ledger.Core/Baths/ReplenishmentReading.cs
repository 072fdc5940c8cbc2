using Ledger.Core.Measures;

namespace Ledger.Core.Baths;

/// <summary>
/// How a replenished developer stands: replenisher is owed for its area, up to a ceiling at which a fresh one is mixed.
/// </summary>
/// <param name="Bath">The working solution.</param>
/// <param name="Per80SquareInches">The replenisher for each 80 sq in.</param>
public sealed record ReplenishmentReading(Bath Bath, Volume Per80SquareInches)
{
    /// <summary>
    /// A fresh developer is mixed after as much replenisher as it holds, unless the user says otherwise (common
    /// practice).
    /// </summary>
    public const int CommonCeilingPercent = 100;

    /// <summary>The replenisher for an area, rounded up: a developer is never starved by rounding.</summary>
    public static Volume For(Area area, Volume per80SquareInches) =>
        Volume.FromMicrolitres(Share.UpTo(per80SquareInches.Microlitres, area.Hundredths, Area.Unit80.Hundredths));

    /// <summary>The area that so much replenisher serves, rounded down.</summary>
    public static Area AreaServedBy(Volume replenisher, Volume per80SquareInches) =>
        Area.FromHundredths(Share.Of(replenisher.Microlitres, Area.Unit80.Hundredths, per80SquareInches.Microlitres));

    /// <summary>What was added so far.</summary>
    public Volume Added => Bath.TopUps.Aggregate(default(Volume), (sum, top) => sum + top.Added);

    /// <summary>What is owed for the area that has passed through, less what was added.</summary>
    public Volume Due
    {
        get
        {
            var owed = For(Bath.Worked, Per80SquareInches);
            return owed > Added ? owed - Added : default;
        }
    }

    /// <summary>As much replenisher as it may take in all; after that a fresh one is mixed.</summary>
    public Volume Ceiling =>
        Volume.FromMicrolitres(Share.Of(Bath.WorkingVolume.Microlitres, Bath.ReplenisherCeilingPercent, 100));

    /// <summary>Whether the ceiling is reached.</summary>
    public bool IsAtCeiling => Added >= Ceiling;

    /// <summary>The day of the top-up that reached the ceiling; null before.</summary>
    public LocalDate? CeilingReachedOn
    {
        get
        {
            var added = default(Volume);
            foreach (var top in Bath.TopUps)
                if ((added += top.Added) >= Ceiling)
                    return top.Date;
            return null;
        }
    }
}
