namespace Ledger.App.Wiring;

/// <summary>
/// Where the ledger lives: as the command line says, else the environment, else the user's data folder.
/// </summary>
internal static class LedgerLocation
{
    /// <summary>The variable that names the ledger's file.</summary>
    public const string Variable = "TRAYLEDGER_FILE";

    /// <summary>The full path of the ledger, whether it is there yet or not.</summary>
    public static string Of(string? option, Func<string, string?> variable)
    {
        if (Named(option, variable) is { Length: > 0 } named)
            return Path.GetFullPath(named);
        return Path.Combine(DataFolder(variable), "trayledger", "ledger.db");
    }

    /// <summary>Whether the user named the file, by the option or the variable.</summary>
    public static bool IsNamed(string? option, Func<string, string?> variable) =>
        Named(option, variable) is { Length: > 0 };

    private static string? Named(string? option, Func<string, string?> variable) => option ?? variable(Variable);

    /// <summary>
    /// The XDG data folder, or what the platform has in its place. A relative path counts as unset, as XDG asks.
    /// </summary>
    private static string DataFolder(Func<string, string?> variable) =>
        variable("XDG_DATA_HOME") is { } xdg && Path.IsPathRooted(xdg)
            ? xdg
            : Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData,
                Environment.SpecialFolderOption.DoNotVerify);
}
