namespace Ledger.Core.Keeping;

/// <summary>
/// What a working solution stands in between sessions. The more air reaches it, the shorter it lives.
/// </summary>
public enum WorkingContainer
{
    /// <summary>A full, closed bottle.</summary>
    FullBottle,

    /// <summary>A closed bottle with air above the solution.</summary>
    PartFullBottle,

    /// <summary>A tank or tray under a lid that floats on the solution.</summary>
    FloatingLid,

    /// <summary>An open tray or tank.</summary>
    OpenTray,
}

/// <summary>The containers' names as they stand in CSV and JSON.</summary>
public static class WorkingContainers
{
    /// <summary>full bottle, part-full bottle, floating lid, open tray.</summary>
    public static IReadOnlyList<string> Names { get; } = ["full bottle", "part-full bottle",
        "floating lid", "open tray"];

    /// <summary>The container's name.</summary>
    public static string Name(this WorkingContainer container) => Names[(int)container];

    /// <summary>The rule that limits a solution in it.</summary>
    public static KeepingRule Rule(this WorkingContainer container) => container switch
    {
        WorkingContainer.FullBottle => KeepingRule.SinceMixing,
        WorkingContainer.PartFullBottle => KeepingRule.InPartFullBottle,
        WorkingContainer.FloatingLid => KeepingRule.UnderFloatingLid,
        _ => KeepingRule.InOpenTray,
    };
}

/// <summary>From this day on a working solution stood in this container.</summary>
/// <param name="Since">The day.</param>
/// <param name="Container">The container.</param>
public sealed record Standing(LocalDate Since, WorkingContainer Container);
