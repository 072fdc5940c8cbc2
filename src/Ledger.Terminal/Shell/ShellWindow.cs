using System.Globalization;
using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Screens;
using Ledger.Terminal.Tables;
using Ledger.Terminal.Themes;
using NodaTime;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace Ledger.Terminal.Shell;

/// <summary>
/// The one window: a title line, the page the user is on, a line for what just happened, the page's keys and the screens' digits. Pages lie
/// on each other like sheets on a desk; Esc takes the top one away.
/// </summary>
internal sealed class ShellWindow : Runnable
{
    private const int SteadyWidth = 24;
    private const string Unnamed = "Trayledger";
    private static readonly TimeSpan Look = TimeSpan.FromSeconds(1);

    private readonly ILedger _ledger;
    private readonly TerminalOptions _options;
    private readonly IReadOnlyList<TableModel> _screens;
    private readonly Stack<Page> _pages = new();
    private readonly TitleLine _title = new() { Height = 1 };
    private readonly View _desk = new() { Y = 1, Width = Dim.Fill(), CanFocus = true };
    private readonly Label _message = new() { X = 1, Width = Dim.Fill(1) };
    private readonly KeyLine _steadyKeys;
    private readonly KeyLine _pageKeys;
    private readonly KeyLine _screenKeys;
    private Blackout? _blackout;
    private object? _timer;
    private (long Version, LocalDate Day) _seen;
    private bool _isLeaveAsked;
    private long? _lastSaved;

    public ShellWindow(ILedger ledger, TerminalOptions options)
    {
        _ledger = ledger;
        _options = options;
        _screens = MainScreens.Of(ledger);
        _steadyKeys = new(Click) { X = Pos.AnchorEnd(SteadyWidth), Width = SteadyWidth, Height = 1 };
        _title.Width = Dim.Fill(SteadyWidth);
        _pageKeys = new(Click) { Y = Pos.AnchorEnd(2), Width = Dim.Fill(), Height = 1 };
        _screenKeys = new(Click) { Y = Pos.AnchorEnd(1), Width = Dim.Fill(), Height = 1 };
        _desk.Height = Dim.Func(_ => Math.Max(1, Viewport.Height - 3 - MessageLines));
        _message.Y = Pos.Bottom(_desk);
        _message.Height = Dim.Func(_ => MessageLines);
        Width = Dim.Fill();
        Height = Dim.Fill();
        SetScheme(Theme.For(options));
        Add(_title, _steadyKeys, _desk, _message, _pageKeys, _screenKeys);
        _seen = (ledger.Version, ledger.Today);
        Show(_screens[0]);
    }

    /// <summary>The page on top.</summary>
    public Page Page => _pages.Peek();

    /// <summary>What the message line says.</summary>
    public string Message => _message.Text;

    /// <summary>Whether the screen is black.</summary>
    public bool IsBlank => _blackout is not null;

    /// <summary>The keys that mean the same wherever the user is; fewer where letters are typed.</summary>
    internal IEnumerable<(string Name, string Meaning)> KeysEverywhere =>
    [
        .. Page.TakesTyping ? Array.Empty<(string, string)>() :
        [
            ($"1 to {_screens.Count}", string.Join(", ", _screens.Select(screen => screen.Name))),
            ("S", "logs a session"),
            ("B", "mixes a bath"),
            ("R", "records a receipt"),
            ("U", "takes back an entry: the selected one in the journal, elsewhere the last one"),
            ("Space", "blanks the screen until a key is pressed"),
            ("Enter", "opens what is selected"),
        ],
        ("Tab", Page.TakesTyping ? "goes to the next field" : "goes from the table to its details, where the arrows scroll"),
        ("F9", "blanks the screen, in a form too"),
        ("Esc", "goes back"),
        ("F1", "this help"),
        ("Ctrl+Q", "quits"),
    ];

    /// <summary>Looks whether another process has written, or a new day has begun, and reads anew.</summary>
    public bool Poll()
    {
        Try(() =>
        {
            var now = (_ledger.Version, _ledger.Today);
            if (now == _seen)
                return;
            _seen = now;
            RefreshAll();
        });
        return true;
    }

    protected override void OnIsRunningChanged(bool newIsRunning)
    {
        base.OnIsRunningChanged(newIsRunning);
        if (newIsRunning)
        {
            _timer = App?.AddTimeout(Look, Poll);
            Page.SetFocus();
        }
        else if (_timer is not null)
            App?.RemoveTimeout(_timer);
    }

    protected override bool OnKeyDown(Key key)
    {
        var isTaken = false;
        Try(() => isTaken = Press(key));
        return isTaken || base.OnKeyDown(key);
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing)
            foreach (var page in _pages.Where(page => page.SuperView is null))
                page.Dispose();
        base.Dispose(disposing);
    }

    /// <summary>What goes wrong with the file is said on the message line; the screen stays as it was.</summary>
    private void Try(Action act)
    {
        try
        {
            act();
        }
        catch (LedgerUnavailableException trouble)
        {
            Tell(Words.Sentence(trouble.Message));
        }
    }

    private bool Press(Key key)
    {
        if (IsBlank)
            Unblank();
        else if (key == Key.Q.WithCtrl)
            Leave(_pages.Any(page => page.WouldLose), () => App?.RequestStop(this));
        else if (key == Key.F9 || (key == Key.Space && !Page.TakesTyping))
            Blank();
        else if (key == Key.F1)
            Help();
        else if (key == Key.Esc)
            Back();
        else if (PageKey(key) is { } own)
            Take(own.Press(Page.Row));
        else if (Page.TakesTyping || !Everywhere(key.NoShift))
            return false;
        return true;
    }

    private ScreenKey? PageKey(Key key) => Page.Keys.FirstOrDefault(own => own.Key == key || (!Page.TakesTyping && own.Key == key.NoShift));

    private bool Everywhere(Key key)
    {
        if (key == Key.S)
            Open(new SessionForm(_ledger));
        else if (key == Key.B)
            Open(new BathForm(_ledger, null));
        else if (key == Key.R)
            Open(new ReceiptForm(_ledger, null));
        else if (key == Key.U)
            TakeBack();
        else if (Digit(key) is { } screen)
            Show(screen);
        else
            return false;
        return true;
    }

    private TableModel? Digit(Key key)
    {
        for (var i = 0; i < _screens.Count; i++)
            if (key == DigitOf(i))
                return _screens[i];
        return null;
    }

    private static Key DigitOf(int screen) => new((char)('1' + screen));

    private void Take(Step? step)
    {
        switch (step)
        {
            case Fill fill:
                Open(fill.Form);
                break;
            case Into into:
                into.Table.Refresh();
                Push(new TablePage(into.Table, Take));
                break;
            case Go go when _screens.FirstOrDefault(screen => screen.Name == go.Screen) is { } screen:
                screen.SelectedId = go.Id;
                Show(screen);
                break;
            case Redrawn when Page is TablePage table:
                table.Bind();
                Caption();
                break;
            case Say say:
                Tell(say.Sentence);
                break;
        }
    }

    private void Open(FormModel form)
    {
        var page = new FormPage(form, Saved);
        page.Touched += Stay;
        Push(page);
    }

    private void Stay()
    {
        if (_isLeaveAsked)
            Tell("");
        _isLeaveAsked = false;
    }

    private void Show(TableModel screen)
    {
        while (_pages.TryPop(out var page))
            Discard(page);
        screen.Refresh();
        Push(new TablePage(screen, Take));
    }

    private void Help()
    {
        if (Page is not HelpPage)
            Push(new HelpPage(Page, KeysEverywhere));
    }

    private void Push(Page page)
    {
        if (_pages.TryPeek(out var below))
            _desk.Remove(below);
        _pages.Push(page);
        Face();
    }

    private void Back() => Leave(Page.WouldLose, () =>
    {
        if (_pages.Count == 1)
        {
            if (Page is TablePage { Model: var model } && model != _screens[0])
                Show(_screens[0]);
            return;
        }

        Discard(_pages.Pop());
        Face();
    });

    /// <summary>Leaves at once, unless something was typed: then only at the second time.</summary>
    private void Leave(bool wouldLose, Action leave)
    {
        if (wouldLose && !_isLeaveAsked)
        {
            Tell("Nothing is saved yet. The same key again leaves without saving.");
            _isLeaveAsked = true;
            return;
        }

        leave();
    }

    private void Face()
    {
        _isLeaveAsked = false;
        _desk.Add(Page);
        Tell("");
        Caption();
        Page.SetFocus();
        SetNeedsDraw();
    }

    private void Discard(Page page)
    {
        if (page.SuperView is not null)
            _desk.Remove(page);
        page.Dispose();
    }

    private void Caption()
    {
        var root = _pages.Last() is TablePage { Model: var model } ? model : null;
        _title.Say(Page.Heading, $"{Dates.Text(_ledger.Today)}  {(_options.File.Length > 0 ? _options.File : Unnamed)}");
        _steadyKeys.Hints = [Page.TakesTyping ? new(Key.F9, "F9", "Blank") : new(Key.Space, "Space", "Blank"), new(Key.F1, "F1", "Help")];
        _pageKeys.Hints =
        [
            .. Page.Keys.Select(key => new KeyHint(key.Key, key.Name, key.Label)),
            .. Page is TablePage { Model.OpenLabel: { } open } ? [new KeyHint(Key.Enter, "Enter", open)] : Array.Empty<KeyHint>(),
            .. _pages.Count > 1 ? [new KeyHint(Key.Esc, "Esc", "Back")] : Array.Empty<KeyHint>(),
            .. Page.TakesTyping || Page is HelpPage ? [] : CommonKeys.Where(common => Page.Keys.All(own => own.Key != common.Key)),
        ];
        _screenKeys.Hints = Page.TakesTyping ? [] : [.. _screens.Select((screen, i) => new KeyHint(
            DigitOf(i), (i + 1).ToString(CultureInfo.InvariantCulture), screen.Name, screen == root))];
    }

    private static KeyHint[] CommonKeys =>
    [
        new(Key.S, "S", "Session"),
        new(Key.B, "B", "Bath"),
        new(Key.R, "R", "Receipt"),
        new(Key.U, "U", "Undo"),
        new(Key.Q.WithCtrl, "Ctrl+Q", "Quit"),
    ];

    private void Saved(Saving saving)
    {
        if (!saving.IsDone)
        {
            Tell(saving.Sentence);
            return;
        }

        _lastSaved = saving.Number;
        Discard(_pages.Pop());
        Face();
        _seen = (_ledger.Version, _ledger.Today);
        RefreshAll();
        Tell($"{saving.Sentence} U takes it back.");
    }

    private void TakeBack()
    {
        var entry = Page is TablePage { Model: JournalModel journal } ? journal.Selected : Last;
        if (entry is null)
            Tell("There is no entry to take back.");
        else
            Open(new CorrectionForm(_ledger, entry));
    }

    /// <summary>The entry saved last here; else the last one that can still be taken back.</summary>
    private JournalEntry? Last
    {
        get
        {
            var latest = _ledger.Journal(_ledger.Today, _lastSaved + 1, 50);
            return latest.FirstOrDefault(entry => entry is { Reverses: null, ReversedBy: null });
        }
    }

    private void RefreshAll()
    {
        foreach (var page in _pages)
            page.Refresh();
        Caption();
    }

    private void Tell(string sentence)
    {
        _message.Text = sentence;
        SetNeedsLayout();
    }

    /// <summary>A long sentence, such as a refusal, takes more than the one line that is kept for messages.</summary>
    private int MessageLines => Viewport.Width < 10 ? 1 : Math.Clamp(Pictures.Paragraph.Of(_message.Text, Viewport.Width - 2).Count(), 1, 4);

    private void Blank()
    {
        _blackout = new(Unblank);
        Add(_blackout);
        _blackout.SetFocus();
    }

    private void Unblank()
    {
        if (_blackout is not { } blackout)
            return;
        _blackout = null;
        Remove(blackout);
        blackout.Dispose();
        Page.SetFocus();
        SetNeedsDraw();
    }

    private void Click(Key key) => OnKeyDown(key);
}
