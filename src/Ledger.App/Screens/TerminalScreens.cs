using Ledger.Storage;
using Ledger.Terminal;

namespace Ledger.App.Screens;

/// <summary>The terminal UI as the process's own screens.</summary>
internal sealed class TerminalScreens : IScreens
{
    /// <summary>The screens, or null when there is no terminal for both input and output.</summary>
    public static IScreens? IfAttached() => TerminalUi.HasTerminal ? new TerminalScreens() : null;

    public int Show(LedgerFile ledger, ZonedClock clock, string? theme)
    {
        // The runtime's console puts back at the exit whatever line mode it met at its own first use: the user's, not
        // that of the screens.
        _ = Console.WindowWidth;
        return TerminalUi.Run(
            ledger,
            new FileUpkeep(ledger.Path, clock),
            PaperFolder.Beside(ledger, ledger.Path),
            new(theme, IsColourUnwanted: Environment.GetEnvironmentVariable("NO_COLOR") is { Length: > 0 },
                ledger.Path));
    }
}
