namespace Ledger.App.Wiring;

/// <summary>What the environment says to the program, and which files it keeps: for the manual.</summary>
internal static class VariablesAndFiles
{
    /// <summary>The variables that are looked at, each with what it does.</summary>
    public static IReadOnlyList<(string Name, string Meaning)> Variables { get; } =
    [
        (LedgerLocation.Variable, "the ledger's file, where --file is not given"),
        ("XDG_DATA_HOME", "your data folder, where it is set and begins with a slash; otherwise ~/.local/share"),
        ("NO_COLOR", "when it is not empty, the screens use no colour"),
        ("LC_ALL",
            "the first of LC_ALL, LC_CTYPE and LANG that is set decides: a UTF-8 locale lets the screens draw with lines "
            + "and blocks"),
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
            "the ledger, one SQLite file, where neither --file nor the variable names another; with no XDG_DATA_HOME in "
            + "~/.local/share"),
        ("ledger.db-wal, ledger.db-shm",
            "what was written last, while the ledger is in use. Where they stand beside the ledger they belong to it; "
            + "trayledger backup copies all of it into one file"),
        ("ledger.db.20260831-210500.backup",
            "the ledger as it was before a newer version brought it up to date, before a restore or before check "
            + "--mend; the numbers are the day and time in UTC. It is never deleted by the program"),
    ];
}
