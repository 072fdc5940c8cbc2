namespace Ledger.Terminal;

/// <summary>How the terminal UI is to look.</summary>
/// <param name="Theme">The theme's name, one of <see cref="Themes"/>; null for the one that the ledger's setting
/// names.</param>
/// <param name="IsColourUnwanted">Whether NO_COLOR is set: then it is monochrome unless a theme is named.</param>
/// <param name="File">The ledger's file, for the title line.</param>
public sealed record TerminalOptions(string? Theme = null, bool IsColourUnwanted = false, string File = "")
{
    /// <summary>
    /// terminal: its own ground and colours that suit it; light and dark: a ground of their own; mono: no colour at
    /// all; red: red on black, for a dark-adapted eye. They are named here, where no colour is loaded, since every
    /// command offers them and few open a screen.
    /// </summary>
    public static IReadOnlyList<string> Themes { get; } = ["terminal", "light", "dark", "mono", "red"];
}
