namespace Ledger.Terminal;

/// <summary>How the terminal UI is to look.</summary>
/// <param name="Theme">The theme's name, one of <see cref="Themes"/>; null for the terminal's own colours.</param>
/// <param name="IsColourUnwanted">Whether NO_COLOR is set: then it is monochrome unless a theme is named.</param>
/// <param name="File">The ledger's file, for the title line.</param>
public sealed record TerminalOptions(string? Theme = null, bool IsColourUnwanted = false, string File = "")
{
    /// <summary>What puts pages on paper; null where nothing can.</summary>
    public IPaper? Paper { get; init; }

    /// <summary>
    /// terminal: its own colours; mono: none at all; red: red on black, for a dark-adapted eye. They are named here, where no colour is
    /// loaded, since every command offers them and few open a screen.
    /// </summary>
    public static IReadOnlyList<string> Themes { get; } = ["terminal", "mono", "red"];
}
