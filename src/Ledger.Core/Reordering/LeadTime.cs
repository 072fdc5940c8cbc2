namespace Ledger.Core.Reordering;

/// <summary>How long a delivery takes from the order on.</summary>
/// <param name="Days">The days that are counted on.</param>
/// <param name="Source">Where they come from.</param>
/// <param name="Observed">The days that past deliveries took, one figure for each delivery of an order line.</param>
public sealed record LeadTime(int Days, LeadTimeSource Source, IReadOnlyList<int> Observed)
{
    /// <summary>So many deliveries are needed before they count for more than what the user has entered.</summary>
    public const int FewestObserved = 3;

    /// <summary>What is assumed where nothing is known.</summary>
    public const int AssumedDays = 14;

    /// <summary>
    /// The lead time of an item: observed from three deliveries on, rounded up; otherwise as entered; otherwise two
    /// weeks.
    /// </summary>
    public static LeadTime Of(int? entered, IReadOnlyList<int> observed) => observed.Count >= FewestObserved
        ? new((int)Math.Ceiling(observed.Average() - 1e-9), LeadTimeSource.Observed, observed)
        : new(entered ?? AssumedDays, entered is null ? LeadTimeSource.Assumed : LeadTimeSource.Entered, observed);

    /// <summary>
    /// The standard deviation (n - 1) of the observed days where those are used; otherwise nothing is known of it.
    /// </summary>
    public double DeviationDays
    {
        get
        {
            if (Source != LeadTimeSource.Observed)
                return 0;
            var mean = Observed.Average();
            return Math.Sqrt(Observed.Sum(days => (days - mean) * (days - mean)) / (Observed.Count - 1));
        }
    }

    /// <summary>The lead times that may come, each as likely as the others.</summary>
    public IReadOnlyList<int> Possible => Source == LeadTimeSource.Observed ? Observed : [Days];
}

/// <summary>Where a lead time comes from.</summary>
public enum LeadTimeSource
{
    /// <summary>The user entered it with the item.</summary>
    Entered,

    /// <summary>Past orders show it.</summary>
    Observed,

    /// <summary>Nobody knows it.</summary>
    Assumed,
}
