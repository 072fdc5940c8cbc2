using Ledger.Terminal.Quiet;
using Ledger.Terminal.Shell;
using Terminal.Gui.App;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;

namespace Ledger.Terminal.Tests.Fakes;

/// <summary>The shell on a screen in memory: keys go in, text comes out.</summary>
internal sealed class Screen : IDisposable
{
    private readonly IApplication _app;
    private static readonly TimeSpan _look = TimeSpan.FromSeconds(0.5);

    private readonly VirtualTimeProvider _time = new();
    private readonly SessionToken _token;

    public Screen(ILedger ledger, int width = 80, int height = 24, TerminalOptions? options = null,
        IUpkeep? upkeep = null, IPaper? paper = null)
    {
        // Begin puts the loop's context on the thread, which an awaiting test would wait on for ever.
        var context = SynchronizationContext.Current;
        _app = Application.Create(_time);
        _app.Init(DriverRegistry.Names.ANSI);
        LibraryParts.DrawOn(_app, new QuickBuffer());
        QuietLoop.KeepArrows(_app);
        _app.Driver!.SetScreenSize(width, height);
        Shell = new(ledger, upkeep ?? new FakeUpkeep(), paper ?? new FakePaper(), options ?? new(File: "ledger.db"));
        _token = _app.Begin(Shell)!;
        SynchronizationContext.SetSynchronizationContext(context);
        Draw();
    }

    public ShellWindow Shell { get; }

    /// <summary>As the loop does: what is there is drawn, then what is due is read, and drawn too.</summary>
    private void Draw()
    {
        _app.LayoutAndDraw();
        _app.TimedEvents!.RunTimers();
        _app.LayoutAndDraw();
    }

    /// <summary>What is seen by somebody who looks up from the keys.</summary>
    public string Text
    {
        get
        {
            After(_look);
            return _app.Driver!.ToString()!;
        }
    }

    /// <summary>The background of every cell.</summary>
    public IEnumerable<Color> Backgrounds
    {
        get
        {
            Draw();
            return _app.Driver!.Contents!.Cast<Cell>().Select(cell => cell.Attribute!.Value.Background);
        }
    }

    /// <summary>The ink and the background of every cell.</summary>
    public IEnumerable<Color> Colours =>
        Backgrounds.Concat(_app.Driver!.Contents!.Cast<Cell>().Select(cell => cell.Attribute!.Value.Foreground));

    /// <summary>The line that says where the user is.</summary>
    public string Title => Lines[1];

    public string[] Lines => Text.ReplaceLineEndings("\n").Split('\n');

    public Screen Press(params Key[] keys)
    {
        foreach (var key in keys)
        {
            _app.InjectKey(key);
            Draw();
        }

        return this;
    }

    /// <summary>What is seen holds each of these.</summary>
    public Screen Shows(params IReadOnlyList<string> texts)
    {
        var seen = Text;
        foreach (var text in texts)
            Assert.Contains(text, seen, StringComparison.Ordinal);
        return this;
    }

    /// <summary>Keys that come faster than the screen is drawn; looking at it draws it.</summary>
    public void Send(params IReadOnlyList<Key> keys)
    {
        foreach (var key in keys)
            _app.InjectKey(key);
    }

    /// <summary>Lets time go by.</summary>
    public void After(TimeSpan time)
    {
        _time.Advance(time);
        Draw();
    }

    /// <summary>Opens the list of actions, types what is looked for and takes the nearest.</summary>
    public Screen Find(string words) => Press(Key.F2).Type(words).Press(Key.Enter);

    public Screen Type(string text) => Press([.. text.Select(letter => new Key(letter))]);

    /// <summary>Waits for what work on another thread brings to the screen.</summary>
    public void Await(string text) =>
        Assert.True(SpinWait.SpinUntil(() => Text.Contains(text, StringComparison.Ordinal), TimeSpan.FromMinutes(1)),
            Text);

    public Screen Click(int column, int row)
    {
        _app.InjectSequence(InputInjectionExtensions.LeftButtonClick(new(column, row)));
        Draw();
        return this;
    }

    /// <summary>Presses the mouse in one place, draws it over others, and lets it go.</summary>
    public Screen Drag(params (int Column, int Row)[] places)
    {
        for (var i = 0; i < places.Length; i++)
            Mouse(places[i], MouseFlags.LeftButtonPressed | (i == 0 ? 0 : MouseFlags.PositionReport));
        return Mouse(places[^1], MouseFlags.LeftButtonReleased);
    }

    /// <summary>Turns the wheel down over a place.</summary>
    public Screen Wheel(int column, int row) => Mouse((column, row), MouseFlags.WheeledDown);

    private Screen Mouse((int Column, int Row) place, MouseFlags flags)
    {
        _app.InjectMouse(new() { Flags = flags, ScreenPosition = new(place.Column, place.Row) });
        Draw();
        return this;
    }

    public void Dispose()
    {
        _app.End(_token);
        Shell.Dispose();
        _app.Dispose();
    }
}
