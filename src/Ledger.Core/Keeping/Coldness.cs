namespace Ledger.Core.Keeping;

/// <summary>How cold a place of storage is.</summary>
public enum Coldness
{
    /// <summary>A shelf, a drawer: no cold place.</summary>
    None,

    /// <summary>A refrigerator.</summary>
    Fridge,

    /// <summary>A freezer.</summary>
    Freezer,
}

/// <summary>Tells cold places by their names.</summary>
public static class ColdPlaces
{
    /// <summary>The places that are offered where nothing else is known.</summary>
    public static IReadOnlyList<string> Usual { get; } = ["freezer", "fridge", "shelf"];

    /// <summary>
    /// "freezer", "chest freezer 2": a freezer; "fridge", "refrigerator": a fridge; anything else is not cold.
    /// </summary>
    public static Coldness Of(string storage) =>
        storage.Contains("freezer", StringComparison.OrdinalIgnoreCase) ? Coldness.Freezer
        : storage.Contains("fridge", StringComparison.OrdinalIgnoreCase)
            || storage.Contains("refrigerator", StringComparison.OrdinalIgnoreCase) ? Coldness.Fridge
        : Coldness.None;
}
