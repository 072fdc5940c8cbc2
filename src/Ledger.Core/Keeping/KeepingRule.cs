namespace Ledger.Core.Keeping;

/// <summary>Which rule decides how long something is good.</summary>
public enum KeepingRule
{
    /// <summary>The date printed on the box or bottle.</summary>
    PrintedDate,

    /// <summary>Days since it was bought, still sealed.</summary>
    SealedLife,

    /// <summary>Days since it was opened.</summary>
    SinceOpening,

    /// <summary>Days since it fell below half full.</summary>
    SinceHalfEmpty,

    /// <summary>Days since it was mixed.</summary>
    SinceMixing,

    /// <summary>Days in a part-full bottle.</summary>
    InPartFullBottle,

    /// <summary>Days under a floating lid.</summary>
    UnderFloatingLid,

    /// <summary>Hours in an open tray.</summary>
    InOpenTray,
}

/// <summary>The rules' names in the trade's words.</summary>
public static class KeepingRules
{
    /// <summary>"expiry date", "since opening", …</summary>
    public static string Name(this KeepingRule rule) => rule switch
    {
        KeepingRule.PrintedDate => "expiry date",
        KeepingRule.SealedLife => "life in the sealed pack",
        KeepingRule.SinceOpening => "life since opening",
        KeepingRule.SinceHalfEmpty => "life below half full",
        KeepingRule.InPartFullBottle => "life in a part-full bottle",
        KeepingRule.UnderFloatingLid => "life under a floating lid",
        KeepingRule.InOpenTray => "life in an open tray",
        _ => "life since mixing",
    };
}
