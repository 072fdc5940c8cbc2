namespace Ledger.Core.Baths;

/// <summary>What ends a bath.</summary>
public enum BathEnd
{
    /// <summary>The area it has taken reached its capacity.</summary>
    Area,

    /// <summary>Its life since mixing is over.</summary>
    Age,

    /// <summary>A clearing test took too long.</summary>
    Test,

    /// <summary>It looked or smelled bad.</summary>
    Sight,

    /// <summary>It has had as much replenisher as it may take.</summary>
    Replenisher,
}

/// <summary>The ends' names as they stand in JSON.</summary>
public static class BathEnds
{
    /// <summary>area, age, test, sight, replenisher.</summary>
    public static IReadOnlyList<string> Names { get; } = ["area", "age", "test", "sight", "replenisher"];

    /// <summary>The end's name.</summary>
    public static string Name(this BathEnd end) => Names[(int)end];

    /// <summary>What a bath is that came to this end: "expired", "exhausted by area".</summary>
    public static string State(this BathEnd end) => end == BathEnd.Age ? "expired" : $"exhausted by {end.Name()}";
}
