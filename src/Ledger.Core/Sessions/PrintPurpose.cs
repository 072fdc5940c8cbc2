namespace Ledger.Core.Sessions;

/// <summary>What a sheet of paper was for.</summary>
public enum PrintPurpose
{
    /// <summary>A final print.</summary>
    Final,

    /// <summary>A work print.</summary>
    Work,

    /// <summary>Test strips.</summary>
    Strip,
}

/// <summary>The purposes' names as they stand in CSV and JSON.</summary>
public static class PrintPurposes
{
    /// <summary>final, work, strip.</summary>
    public static IReadOnlyList<string> Names { get; } = ["final", "work", "strip"];

    /// <summary>The purpose's name.</summary>
    public static string Name(this PrintPurpose purpose) => Names[(int)purpose];
}
