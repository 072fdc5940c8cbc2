namespace Ledger.Core.Baths;

/// <summary>
/// What passes through a bath. Film and paper never share one: a capacity counts for one of them only.
/// </summary>
public enum BathMaterial
{
    /// <summary>Film.</summary>
    Film,

    /// <summary>Paper.</summary>
    Paper,
}

/// <summary>The materials' names as they stand in CSV and JSON.</summary>
public static class BathMaterials
{
    /// <summary>film, paper.</summary>
    public static IReadOnlyList<string> Names { get; } = ["film", "paper"];

    /// <summary>The material's name.</summary>
    public static string Name(this BathMaterial material) => Names[(int)material];
}
