namespace Ledger.Core.Baths;

/// <summary>Whether a bath works.</summary>
public enum BathState
{
    /// <summary>It works.</summary>
    InUse,

    /// <summary>It no longer works: by area, test, sight or replenisher.</summary>
    Exhausted,

    /// <summary>It no longer works: by age.</summary>
    Expired,

    /// <summary>It was discarded, whether it still worked or not.</summary>
    Discarded,
}

/// <summary>The states' names as they stand in JSON.</summary>
public static class BathStates
{
    /// <summary>in use, exhausted, expired, discarded.</summary>
    public static IReadOnlyList<string> Names { get; } = ["in use", "exhausted", "expired", "discarded"];

    /// <summary>The state's name.</summary>
    public static string Name(this BathState state) => Names[(int)state];
}
