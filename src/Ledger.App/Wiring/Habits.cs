namespace Ledger.App.Wiring;

/// <summary>What can be said once instead of each time: the one list of it.</summary>
internal static class Habits
{
    /// <summary>All of them: what it is, the option, the variable and the setting that say it, the first that is said deciding; empty where there is none.</summary>
    public static IReadOnlyList<(string What, string Option, string Variable, string Setting)> All { get; } =
    [
        ("the ledger's file", "--file", LedgerLocation.Variable, ""),
        ("the folder of the ledger, where no file is named", "", "XDG_DATA_HOME", ""),
        ("colours of the screens", "--theme", TerminalStart.Variable, "theme"),
        ("no colours on the screens", "--theme mono", "NO_COLOR", ""),
        ("units of liquids", "", "", "liquids"),
        ("units of areas", "", "", "areas"),
        ("currency", "", "", "currency"),
        ("the cost formula", "--formula", "", "cost-formula"),
        ("columns of text", "", ThisProcess.ColumnsVariable, ""),
        ("signs in pictures: lines and blocks, or plain letters", "", "LC_ALL, LC_CTYPE, LANG", ""),
        ("the day and its time zone", "--as-of", "TZ", ""),
        ("faults of the program explained in full", "", Trouble.Variable, ""),
    ];
}
