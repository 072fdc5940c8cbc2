namespace Ledger.Core.Sessions;

/// <summary>What became of a developed sheet.</summary>
public enum Fate
{
    /// <summary>A good negative.</summary>
    Negative,

    /// <summary>A negative worth printing.</summary>
    Keeper,

    /// <summary>Spoiled.</summary>
    Reject,

    /// <summary>Used for a test.</summary>
    Test,

    /// <summary>Used for practice.</summary>
    Practice,

    /// <summary>
    /// A sheet that was developed before and keeps a lone one company: it loads the fixer and draws no new film.
    /// </summary>
    Dummy,
}

/// <summary>The fates' names as they stand in CSV and JSON.</summary>
public static class Fates
{
    /// <summary>negative, keeper, reject, test, practice, dummy.</summary>
    public static IReadOnlyList<string> Names { get; } = ["negative", "keeper", "reject", "test", "practice", "dummy"];

    /// <summary>The fate's name.</summary>
    public static string Name(this Fate fate) => Names[(int)fate];

    /// <summary>Whether the sheet is filed as a negative; a keeper is one.</summary>
    public static bool IsNegative(this Fate fate) => fate is Fate.Negative or Fate.Keeper;
}
