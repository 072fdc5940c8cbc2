namespace Ledger.Core.Film;

/// <summary>What can be done to a developed sheet, or found out about it.</summary>
public enum SheetWork
{
    /// <summary>It was looked at.</summary>
    Inspected,

    /// <summary>A drop showed whether silver was left after fixing.</summary>
    ResidualSilverTest,

    /// <summary>A drop showed how much fixer was left after washing.</summary>
    ResidualHypoTest,

    /// <summary>It was fixed again.</summary>
    Refixed,

    /// <summary>It was washed again.</summary>
    Rewashed,

    /// <summary>Clear spots were touched out.</summary>
    Spotted,

    /// <summary>It was toned.</summary>
    Toned,

    /// <summary>Something else.</summary>
    Other,
}

/// <summary>The names of what is done to a sheet.</summary>
public static class SheetWorks
{
    /// <summary>inspected, residual silver test, residual hypo test, refixed, rewashed, spotted, toned,
    /// other.</summary>
    public static IReadOnlyList<string> Names { get; } =
        ["inspected", "residual silver test", "residual hypo test", "refixed", "rewashed", "spotted", "toned", "other"];

    /// <summary>The name.</summary>
    public static string Name(this SheetWork work) => Names[(int)work];

    /// <summary>Whether something is found out by it, so that it can be passed or failed.</summary>
    public static bool IsTest(this SheetWork work) => work <= SheetWork.ResidualHypoTest;
}

/// <summary>Something that was done to a sheet or found out about it.</summary>
/// <param name="Entry">The entry's number.</param>
/// <param name="Date">The day.</param>
/// <param name="What">What.</param>
/// <param name="Result">What it showed, or how it was done; may be empty.</param>
/// <param name="HasPassed">Whether a test was passed; null where nothing was tested.</param>
public sealed record SheetFinding(long Entry, NodaTime.LocalDate Date, SheetWork What, string Result, bool? HasPassed)
{
    /// <summary>"residual silver test: no stain, passed".</summary>
    public string Text => What.Name() + (Result.Length > 0 ? $": {Result}" : "")
        + HasPassed switch { true => ", passed", false => ", failed", null => "" };
}
