namespace Ledger.Core.Stock;

/// <summary>What sort of thing an item is.</summary>
public enum ItemKind
{
    /// <summary>Film, or paper, in one format.</summary>
    Film,

    /// <summary>A chemical.</summary>
    Chemical,

    /// <summary>Anything else that is used up: gloves, bags, clips.</summary>
    Supply,
}

/// <summary>What a chemical does in a process.</summary>
public enum ItemRole
{
    /// <summary>Anything not named here, and everything that is not a chemical.</summary>
    Other,

    /// <summary>Developer.</summary>
    Developer,

    /// <summary>Stop bath.</summary>
    Stop,

    /// <summary>Fixer.</summary>
    Fixer,

    /// <summary>Wash aid.</summary>
    WashAid,

    /// <summary>Wetting agent.</summary>
    WettingAgent,

    /// <summary>Toner.</summary>
    Toner,

    /// <summary>Water that is bought: distilled or deionised.</summary>
    Water,

    /// <summary>Resin-coated paper.</summary>
    ResinCoatedPaper,

    /// <summary>Fibre-based paper.</summary>
    FibrePaper,

    /// <summary>A presoak before the developer; a step, never an item's role.</summary>
    Presoak,

    /// <summary>A wash; a step, never an item's role.</summary>
    Wash,

    /// <summary>The final rinse; a step, never an item's role.</summary>
    FinalRinse,
}

/// <summary>The names of kinds and roles as they stand in CSV and JSON.</summary>
public static class ItemNames
{
    /// <summary>film, chemical, supply.</summary>
    public static IReadOnlyList<string> Kinds { get; } = ["film", "chemical", "supply"];

    /// <summary>
    /// other, developer, stop, fixer, wash aid, wetting agent, toner, water, rc paper, fibre paper; and of steps alone:
    /// presoak, wash, final rinse.
    /// </summary>
    public static IReadOnlyList<string> Roles { get; } =
    [
        "other", "developer", "stop", "fixer", "wash aid", "wetting agent", "toner", "water",
        "rc paper", "fibre paper", "presoak", "wash", "final rinse",
    ];

    /// <summary>Whether only a step of a process can have the role, because nothing is bought for it.</summary>
    public static bool IsOfStepsOnly(this ItemRole role) =>
        role is ItemRole.Presoak or ItemRole.Wash or ItemRole.FinalRinse;

    /// <summary>The kind's name.</summary>
    public static string Name(this ItemKind kind) => Kinds[(int)kind];

    /// <summary>The role's name.</summary>
    public static string Name(this ItemRole role) => Roles[(int)role];
}
