using Ledger.Terminal.Pictures;
using Ledger.Terminal.Quiet;
using Ledger.Terminal.Shell;
using Terminal.Gui.Drivers;

namespace Ledger.Terminal;

/// <summary>The terminal UI.</summary>
public static class TerminalUi
{
    /// <summary>
    /// Whether there is a terminal to read keys from and to draw on; without one <see cref="Run"/> would wait for ever.
    /// </summary>
    public static bool HasTerminal => Driver.IsAttachedToTerminal(out _, out _);

    /// <summary>
    /// Runs until the user quits or a signal ends it; returns the exit status, 128 and the signal's number for the
    /// latter.
    /// </summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="upkeep">Work on its file.</param>
    /// <param name="paper">What puts pages on paper.</param>
    /// <param name="options">How it is to look.</param>
    public static int Run(ILedger ledger, IUpkeep upkeep, IPaper paper, TerminalOptions options)
    {
        ArgumentNullException.ThrowIfNull(ledger);
        ArgumentNullException.ThrowIfNull(upkeep);
        ArgumentNullException.ThrowIfNull(paper);
        ArgumentNullException.ThrowIfNull(options);

        Signs.Choose(Environment.GetEnvironmentVariable);
        using var modes = new TerminalModes();
        using var signals = new Signals(modes);
        using var loop = new QuietLoop();
        using var app = loop.NewApplication();
        app.Init();
        modes.Entered();
        QuietLoop.KeepArrows(app);
        using var shell = new ShellWindow(ledger, upkeep, paper, options);
        signals.Guard(app, shell);
        try
        {
            app.Run(shell);
        }
        catch (IOException) when (signals.Status != 0)
        {
            // The terminal left before the screens did.
        }

        return signals.Status;
    }
}
