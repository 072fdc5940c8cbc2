using System.Diagnostics;
using System.Runtime.InteropServices;
using Terminal.Gui.App;

namespace Ledger.Terminal.Quiet;

/// <summary>
/// The application's loop, asleep while nothing happens. The library's goes round 25 times a second and sends the
/// cursor each time; this one goes round when a key, a timer or a change of the window calls for it.
/// </summary>
internal sealed class QuietLoop : IDisposable
{
    /// <summary>More rounds a second than the library divides a second by: it does not sleep by itself then.</summary>
    private const ushort Unslowed = 1001;

    /// <summary>A lone Esc and a click are told from what may follow them by going round a little longer.</summary>
    private static readonly TimeSpan Lively = TimeSpan.FromMilliseconds(125), Awake = TimeSpan.FromMilliseconds(700);

    private const int Brief = 10, Short = 60;
    private readonly Wake _wake = new();
    private readonly PosixSignalRegistration? _resized;
    private long _typed = Stopwatch.GetTimestamp();

    /// <summary>A loop for an application; to be closed after it.</summary>
    public QuietLoop()
    {
        if (!OperatingSystem.IsWindows())
            _resized = PosixSignalRegistration.Create(PosixSignal.SIGWINCH, _ => _wake.Now());
    }

    /// <summary>
    /// An application with quiet parts; on Windows, where they are not known, with the library's own.
    /// </summary>
    public IApplication NewApplication()
    {
        if (OperatingSystem.IsWindows())
            return Application.Create();
        var input = new QuietInput(_wake);
        var output = new QuietOutput(Descriptor.Send, input.End);
        var app = LibraryParts.NewApplication(input, output);
        app.InitializedChanged += (_, initialized) =>
        {
            if (!initialized.Value)
                return;
            LibraryParts.DrawOn(app, new QuickBuffer());
            app.Driver!.ClearedContents += (_, _) => output.Forget();
        };
        app.Iteration += (_, _) => Rest(app);
        app.TimedEvents!.Added += (_, _) => _wake.Now();
        Application.MaximumIterationsPerSecond = Unslowed;
        return app;
    }

    /// <summary>An arrow that nobody takes must not go to another pane.</summary>
    public static void KeepArrows(IApplication app)
    {
        foreach (var arrow in new[] { Key.CursorUp, Key.CursorDown, Key.CursorLeft, Key.CursorRight })
            app.Keyboard.KeyBindings.Remove(arrow);
    }

    public void Dispose()
    {
        _resized?.Dispose();
        _wake.Dispose();
    }

    /// <summary>Sleeps until there is something to do, at the beginning of a round.</summary>
    private void Rest(IApplication app)
    {
        // Timers come last in a round; what they changed is to be seen before the next one.
        app.LayoutAndDraw();
        PlaceCursor(app);
        if (_wake.WasTyped())
            _typed = Stopwatch.GetTimestamp();
        var due = 0;
        var isTimed = app.TimedEvents is TimedEvents timers && timers.CheckTimers(out due);
        var since = Stopwatch.GetElapsedTime(_typed);
        var longest = since < Lively ? Brief : since < Awake ? Short : -1;
        _wake.Wait(!isTimed ? longest : longest < 0 ? due : Math.Min(due, longest));
        if (_wake.WasTyped())
            _typed = Stopwatch.GetTimestamp();
    }

    /// <summary>The library never notes that the cursor is where it should be.</summary>
    private static void PlaceCursor(IApplication app)
    {
        if (app.Driver is not { } driver || !driver.GetCursorNeedsUpdate())
            return;
        app.Navigation?.UpdateCursor();
        driver.SetCursorNeedsUpdate(false);
    }
}
