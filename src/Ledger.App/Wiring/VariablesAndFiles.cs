namespace Ledger.App.Wiring;

/// <summary>
/// What can be said once instead of each time, and which files the program keeps: the one list of it, for help and
/// manual.
/// </summary>
internal static class VariablesAndFiles
{
    /// <summary>
    /// What is said by an option, a variable or a setting of the ledger, the first that is said deciding; empty where
    /// there is none.
    /// </summary>
    public static IReadOnlyList<(string What, string Option, string Variable, string Setting)> Choices { get; } =
    [
        ("the ledger's file", "--file", LedgerLocation.Variable, ""),
        ("colours of the screens", "--theme", TerminalStart.Variable, "theme"),
        ("units of liquids", "", "", "liquids"),
        ("units of areas", "", "", "areas"),
        ("currency", "", "", "currency"),
        ("cost formula", "--formula", "", "cost-formula"),
        ("columns of text", "", ThisProcess.ColumnsVariable, ""),
    ];

    /// <summary>The variables that are looked at, each with what it does.</summary>
    public static IReadOnlyList<(string Name, string Meaning)> Variables { get; } =
    [
        (LedgerLocation.Variable, "the ledger's file, where --file is not given"),
        ("XDG_DATA_HOME", "your data folder, where it is set and begins with a slash; otherwise ~/.local/share"),
        (TerminalStart.Variable,
            "how the screens are coloured, where --theme is not given; otherwise as the setting theme says"),
        (ThisProcess.ColumnsVariable, "how many columns text takes, from 40 on; otherwise as many as the terminal has"),
        ("NO_COLOR", "when it is not empty, the screens use no colour"),
        ("LC_ALL",
            "the first of LC_ALL, LC_CTYPE and LANG that is set decides: a UTF-8 locale lets the screens draw with "
                + "lines and blocks"),
        ("LC_CTYPE", "see LC_ALL"),
        ("LANG", "see LC_ALL"),
        ("TERM", "the terminal; with dumb the screens draw with letters and signs of the keyboard alone"),
        ("TZ", "the time zone that says which day it is; otherwise the system's own"),
        ("TMPDIR", "where demo makes its ledger, unless --into names another place; otherwise /tmp"),
        (Trouble.Variable, "with 1 a fault of the program is explained in full"),
    ];

    /// <summary>The files that it makes of itself, each with what it is.</summary>
    public static IReadOnlyList<(string Name, string Meaning)> Files { get; } =
    [
        ("$XDG_DATA_HOME/trayledger/ledger.db",
            "the ledger, one SQLite file, where neither --file nor the variable names another; with no XDG_DATA_HOME "
                + "in ~/.local/share"),
        ("ledger.db-wal, ledger.db-shm",
            "what was written last, while the ledger is in use. Where they stand beside the ledger they belong to it; "
            + "trayledger backup copies all of it into one file"),
        ("ledger.db.20260831-210500.backup",
            "the ledger as it was before a newer version brought it up to date, before a restore or before check "
            + "--mend; the numbers are the day and time in UTC. It is never deleted by the program"),
    ];
}
