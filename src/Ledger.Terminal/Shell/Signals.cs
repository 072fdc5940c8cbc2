using System.Runtime.InteropServices;
using Terminal.Gui.App;

namespace Ledger.Terminal.Shell;

/// <summary>
/// The signals that end, stop and continue the screens. One that ends them lets the program close the ledger and give
/// the terminal back; one that stops them gives it back for as long as they are stopped.
/// </summary>
internal sealed class Signals : IDisposable
{
    private const int SignalBase = 128;

    /// <summary>How long the screens may take to end by themselves.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    private readonly TerminalModes _modes;
    private readonly List<PosixSignalRegistration> _watched = [];
    private (IApplication App, ShellWindow Shell)? _screens;
    private Timer? _atLast;

    /// <summary>
    /// Watches from now on: before the library touches the terminal, so that there is no moment without it.
    /// </summary>
    public Signals(TerminalModes modes)
    {
        _modes = modes;
        foreach (var (signal, number) in new[]
            { (PosixSignal.SIGTERM, 15), (PosixSignal.SIGHUP, 1), (PosixSignal.SIGINT, 2), (PosixSignal.SIGQUIT, 3) })
            Watch(signal, came => End(came, number));
        if (OperatingSystem.IsWindows())
            return;
        Watch(PosixSignal.SIGTSTP, Stop);
        Watch(PosixSignal.SIGCONT, Continue);
    }

    /// <summary>The screens that are to end and to be drawn again.</summary>
    public void Guard(IApplication app, ShellWindow shell)
    {
        _screens = (app, shell);

        // The library would stop the process without leaving its screen.
        foreach (var key in app.Keyboard.KeyBindings.GetAllFromCommands(Command.Suspend).ToList())
            app.Keyboard.KeyBindings.Remove(key);
        shell.KeyDownNotHandled += StopByKey;
    }

    /// <summary>The exit status: 128 and the number of the signal that ended the screens, or 0.</summary>
    public int Status { get; private set; }

    public void Dispose()
    {
        foreach (var watched in _watched)
            watched.Dispose();
        _atLast?.Dispose();
    }

    private void Watch(PosixSignal signal, Action<PosixSignalContext> act) =>
        _watched.Add(PosixSignalRegistration.Create(signal, act));

    /// <summary>
    /// The first one asks the screens to end; the second one, or the end of the patience, does not wait for them.
    /// </summary>
    private void End(PosixSignalContext came, int number)
    {
        came.Cancel = true;
        var isSecond = Status != 0;
        Status = SignalBase + number;
        if (isSecond || _screens is not { } screens)
        {
            EndNow();
            return;
        }

        _atLast = new(_ => EndNow(), null, Patience, System.Threading.Timeout.InfiniteTimeSpan);
        screens.App.Invoke(() => screens.App.RequestStop(screens.Shell));
    }

    private void EndNow()
    {
        _modes.Leave(isSure: false);
        Environment.Exit(Status);
    }

    private void Stop(PosixSignalContext came)
    {
        came.Cancel = true;
        if (!JobControl.CanStop)
            return;
        _modes.Leave();
        JobControl.Stop();
    }

    private void Continue(PosixSignalContext came)
    {
        // Otherwise the runtime puts the line mode of its own console in place of that of the screens, after this.
        came.Cancel = true;
        if (_screens is not { } screens)
            return;
        _modes.Enter();
        screens.App.Invoke(() =>
        {
            screens.App.Driver?.ClearContents();
            screens.App.LayoutAndDraw(true);
        });
    }

    private static void StopByKey(object? sender, Key key)
    {
        if (key != Key.Z.WithCtrl || !JobControl.CanStop)
            return;
        key.Handled = true;
        JobControl.Ask();
    }
}
