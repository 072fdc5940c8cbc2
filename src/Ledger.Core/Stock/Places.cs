namespace Ledger.Core.Stock;

/// <summary>The single places, which every ledger has once. All other places are containers and baths.</summary>
public static class Places
{
    /// <summary>Where deliveries come from; what it holds is less than nothing.</summary>
    public static readonly PlaceId Supplier = new(1);

    /// <summary>Developed sheets that are negatives.</summary>
    public static readonly PlaceId FiledNegatives = new(2);

    /// <summary>Sheets that were used but are no negatives: rejects, tests, practice.</summary>
    public static readonly PlaceId Rejects = new(3);

    /// <summary>Poured away or used up.</summary>
    public static readonly PlaceId UsedUp = new(4);

    /// <summary>What a count found missing, or (less than nothing) found in excess.</summary>
    public static readonly PlaceId LostOrGained = new(5);

    /// <summary>Whole containers and sheets discarded unused.</summary>
    public static readonly PlaceId Discarded = new(6);

    /// <summary>
    /// Where powder turns into stock solution: what goes in as one lot comes out as another, at the same cost.
    /// </summary>
    public static readonly PlaceId Mixing = new(7);

    /// <summary>Paper that was printed on.</summary>
    public static readonly PlaceId Prints = new(8);

    /// <summary>The first number that a container or a bath can have.</summary>
    public const long FirstFree = 100;

    /// <summary>The name of a single place.</summary>
    public static string Name(PlaceId place) => place.Value switch
    {
        1 => "supplier",
        2 => "filed negatives",
        3 => "rejects",
        4 => "used up",
        5 => "lost or gained",
        6 => "discarded",
        7 => "mixing",
        8 => "prints",
        _ => throw new ArgumentOutOfRangeException(nameof(place), place, "not a single place"),
    };
}
