using Ledger.Core.Measures;

namespace Ledger.Core.Baths;

/// <summary>How a replenished developer stands: replenisher is owed for its area, up to a ceiling at which it is mixed anew.</summary>
/// <param name="Bath">The working solution.</param>
/// <param name="Per80SquareInches">The replenisher for each 80 sq in.</param>
public sealed record ReplenishmentReading(Bath Bath, Volume Per80SquareInches)
{
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

    /// <summary>The ceiling: as much replenisher as there was working solution. After that it is mixed anew (common practice).</summary>
    public Volume Ceiling => Bath.WorkingVolume;

    /// <summary>Whether the ceiling is reached.</summary>
    public bool IsAtCeiling => Added >= Ceiling;

    /// <summary>What to pour off before adding what is due, when the bottle has room for so much only.</summary>
    public Volume BleedFor(Volume room) => Due > room ? Due - room : default;
}
