using Ledger.Terminal.Blocks;
using Ledger.Terminal.Finder;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;
using Ledger.Terminal.Screens;
using Ledger.Terminal.Tables;
using Ledger.Terminal.Themes;
using Terminal.Gui.App;
using Terminal.Gui.Views;

namespace Ledger.Terminal.Shell;

/// <summary>
/// The one window: the screens' names at its head, the title of the page the user is on, the page, a line for what just
/// happened, the page's keys and those that are the same everywhere. Pages lie on each other like sheets on a desk; Esc
/// takes the top one away.
/// </summary>
internal sealed class ShellWindow : Runnable
{
    private const string Unnamed = "Trayledger";

    /// <summary>While this is said, the key means what was just saved and not the selected row.</summary>
    private static readonly string TakesBack = $"{KeyTable.Undo.Letter} takes it back.";

    private static readonly TimeSpan Look = TimeSpan.FromSeconds(1);

    private readonly ILedger _ledger;
    private readonly IPaper _paper;
    private LabelPlace _labelPlace = LabelPlace.Plain;
    private readonly TerminalOptions _options;
    private readonly IReadOnlyList<TableModel> _screens;
    private readonly CommonKeys _common;
    private readonly HeadLine _head;
    private readonly Desk _desk = new() { Y = 2 };
    private readonly TitleLine _title = new() { Y = 1, Width = Dim.Fill(), Height = 1 };
    private readonly MessageLine _message = new() { Width = Dim.Fill() };
    private readonly KeyLine _pageKeys;
    private readonly KeyLine _steadyKeys;
    private Blackout? _blackout;
    private FinderBox? _finder;
    private object? _timer;
    private (long Version, LocalDate Day) _seen;
    private (string?, bool?) _dress;
    private bool _isLeaveAsked;
    private bool _isBlankTold;
    private bool _isFaultSaid;

    public ShellWindow(ILedger ledger, IUpkeep upkeep, IPaper paper, TerminalOptions options)
    {
        _ledger = ledger;
        _paper = paper;
        _options = options;
        _screens = MainScreens.Of(ledger, upkeep, options.File);
        _common = new(ledger, _screens);
        _head = new(Click) { Width = Dim.Fill(), Height = 1 };
        _pageKeys = new(Click) { Y = Pos.AnchorEnd(2), Width = Dim.Fill(), Height = 1 };
        _steadyKeys = new(Click) { Y = Pos.AnchorEnd(1), Width = Dim.Fill(), Height = 1 };
        _desk.Height = Dim.Func(_ => Math.Max(1, Viewport.Height - 4 - _message.LinesAt(Viewport.Width)));
        _message.Y = Pos.Bottom(_desk);
        _message.Height = Dim.Func(_ => _message.LinesAt(Viewport.Width));
        Width = Dim.Fill();
        Height = Dim.Fill();
        Add(_head, _title, _desk, _message, _pageKeys, _steadyKeys);
        ledger.Read(() =>
        {
            _seen = (ledger.Version, ledger.Today);
            Dress();
            Show(_screens[0]);
        });
    }

    /// <summary>The page on top.</summary>
    public Page Page => _desk.Top;

    /// <summary>Whether the screen is black.</summary>
    public bool IsBlank => _blackout is not null;

    /// <summary>Looks whether another process has written, or a new day has come, and reads again.</summary>
    public bool Poll()
    {
        Try(LookAgain);
        return true;
    }

    /// <summary>A key means what is there now: what it leads to is of one state with what is seen.</summary>
    private void LookAgain()
    {
        var now = (_ledger.Version, _ledger.Today);
        if (now == _seen)
            return;
        _seen = now;
        _desk.Refresh();
        Caption();
    }

    /// <summary>Colours everything by the theme that holds now.</summary>
    private void Dress()
    {
        var theme = Theme.Name(_options, _ledger.HoldingsOn(_ledger.Today).Settings.Theme);
        var isDark = App?.Driver?.DefaultAttribute?.Background.IsDarkColor();
        if (_dress == (theme, isDark))
            return;
        _dress = (theme, isDark);
        // Colours by their names are the terminal's own; red must be exactly what it is called.
        if (App?.Driver is { } driver)
            driver.Force16Colors = !Theme.IsExact(theme);
        SetScheme(Theme.Of(theme, isDark));
        SetNeedsDraw();
    }

    private void OnGroundKnown(object? sender, ValueChangedEventArgs<global::Terminal.Gui.Drawing.Attribute?> e) =>
        _ = Try(Dress);

    protected override void OnIsRunningChanged(bool newIsRunning)
    {
        base.OnIsRunningChanged(newIsRunning);
        if (App?.Driver is { } driver)
        {
            driver.DefaultAttributeChanged -= OnGroundKnown;
            if (newIsRunning)
            {
                driver.DefaultAttributeChanged += OnGroundKnown;
                driver.Clipboard = new Clipboard(driver.WriteRaw);
            }
        }

        if (newIsRunning)
        {
            _dress = default;
            _ = Try(Dress);
            _timer = App?.AddTimeout(Look, Poll);
            Page.SetFocus();
        }
        else if (_timer is not null)
            App?.RemoveTimeout(_timer);
        if (!newIsRunning)
            _desk.Park();
    }

    protected override bool OnClearingViewport() => Ground.Clear(this);

    protected override bool OnKeyDown(Key key)
    {
        var isTaken = false;
        Try(() =>
        {
            LookAgain();
            isTaken = Press(key);
        });
        return isTaken || base.OnKeyDown(key);
    }

    /// <summary>
    /// Whatever is read in answer to one key or one look is one state of the ledger. What goes wrong with the file is
    /// said on the message line; the screen stays as it was.
    /// </summary>
    private bool Try(Action act)
    {
        try
        {
            _ledger.Read(act);
            return true;
        }
        catch (LedgerUnavailableException trouble)
        {
            _message.Say(ScreenText.Sentence(trouble.Message));
            return false;
        }
    }

    private bool Press(Key key)
    {
        if (IsBlank)
            return _blackout!.NewKeyDownEvent(key);
        else if (_finder is not null)
            Answer(key);
        else if (key == Key.Q.WithCtrl)
            Leave(_desk.Park(), () => App?.RequestStop(this));
        else if (key == Key.F9 || (key == Key.Space && !Page.TakesTyping))
            Blank();
        else if (key == Key.F1 || (key == new Key('?') && !Page.TakesTyping))
            Help();
        else if (key == Key.F2)
            Find();
        else if (key == Key.Esc)
            Leave(Page.Park(), Page.Stop() ? Caption : LeavePage);
        else if (Meant(key) is { } meant)
            Do(meant);
        else
            return false;
        return true;
    }

    /// <summary>
    /// The page's own key, or else the one that means the same everywhere. A capital letter is the same key.
    /// </summary>
    private ScreenAction? Meant(Key key) => Page.TakesTyping
        ? Page.Actions.FirstOrDefault(own => own.Key?.Equals(key) == true)
        : (_message.Hint == TakesBack ? [_common.TakeBackLast] : Array.Empty<ScreenAction>()).Concat(Page.Actions)
            .Concat(_common.Work).Concat(_common.Screens).FirstOrDefault(own => own.Key?.Equals(key.NoShift) == true);

    /// <summary>What saves a form lays it away: the page that lies below has not been asked for anything.</summary>
    private void Do(ScreenAction meant)
    {
        var asked = Page;
        var step = meant.Press(asked.Row);
        if (step is not null || asked == Page)
            Follow(step);
    }

    private void Follow(Step? step) => _ = Try(() =>
    {
        switch (step)
        {
            case FormStep fill:
                Open(fill);
                break;
            case TableStep into:
                Lay(into.Table);
                break;
            case EntryStep open:
                Lay(new JournalModel(_ledger, new(SubjectKind.Entry, $"{open.Number}")));
                break;
            case ReadStep read:
                Lay(new ReadPage(read));
                break;
            case TracedStep trace:
                var traced = new TraceModel(_ledger, trace.What);
                traced.Refresh();
                Lay(Table(traced));
                break;
            case ScreenStep go when _screens.FirstOrDefault(screen => screen.Name == go.Screen) is { } screen:
                screen.SelectedId = go.Id ?? screen.SelectedId;
                Show(screen);
                break;
            case WorkStep begin:
                Watch(new(begin.Work));
                break;
            case CopyStep copy:
                Open(new(new CopyForm(copy.Source, _paper)));
                break;
            case LabelStep labels:
                Open(new(new LabelForm(labels, _paper, _labelPlace, place => _labelPlace = place)));
                break;
            case ClipboardStep copied:
                Back();
                _ = App?.Driver?.Clipboard?.TrySetClipboardData(copied.Text);
                _message.Say(
                    "It was sent to the terminal's clipboard. Where the terminal refuses that, copy it to a file.");
                break;
            case FileStep kept:
                if (_paper.Keep(kept.Text, kept.File) is var (isKept, sentence) && isKept)
                    Back();
                _message.Say(sentence);
                break;
            case RedrawStep when Page is TablePage table:
                table.Bind();
                Caption();
                break;
            case PaperStep page:
                if (Page is FormPage { Form: LabelForm })
                    Back();
                _message.Say(page.Write(_paper));
                break;
            case null when Page is TablePage { Row: < 0 } table:
                _message.Say(table.Model.NoRow);
                break;
            case MessageStep say:
                _message.Say(say.Sentence);
                break;
        }
    });

    private void Show(TableModel screen)
    {
        screen.Sift.Words = "";
        screen.Refresh();
        _desk.Change(Table(screen));
        Face();
    }

    private TablePage Table(TableModel model)
    {
        var page = new TablePage(model, Follow);
        page.Turned += Caption;
        return page;
    }

    private void Watch(WorkPage page)
    {
        page.Ended += Caption;
        Lay(page);
        page.Start();
    }

    private void Open(FormStep step)
    {
        var form = step.Form;
        var page = new FormPage(form, saving => Saved(saving, step.Then));
        page.Touched += Stay;
        page.Turned += Caption;
        var kept = form.ParkedAs is { } name ? _ledger.Draft(name) : null;
        if (kept is not null)
            page.PutBack(kept);
        Lay(page);
        if (kept is not null)
            _message.Say("This is as you left it. Ctrl+E empties it.");
    }

    private void Help()
    {
        if (Page is not HelpPage)
            Lay(new HelpPage(Page, _common.Meanings(Page.TakesTyping)));
    }

    private void Lay(TableModel table)
    {
        table.Refresh();
        Lay(Table(table));
    }

    private void Lay(Page page)
    {
        _desk.Lay(page);
        Face();
    }

    private void Back()
    {
        if (_desk.HasBelow)
        {
            _desk.TakeAway();
            Face();
        }
        else if (_desk.Root != _screens[0])
            Show(_screens[0]);
    }

    /// <summary>What was typed waits until its form is opened again, unless it cannot be kept.</summary>
    private void LeavePage()
    {
        var left = !_isLeaveAsked && Page is FormPage { Form: { IsTouched: true, ParkedAs: not null } form }
            ? form.Title
            : null;
        Back();
        if (left is not null)
            _message.Say($"{left} is kept as you left it. The same way leads back to it.");
    }

    /// <summary>Leaves at once, unless what was typed cannot be kept: then only at the second time.</summary>
    private void Leave(bool isKept, Action leave)
    {
        if (isKept || _isLeaveAsked)
        {
            leave();
            return;
        }

        _message.Say("Nothing is saved yet, and it cannot be kept. The same key again leaves without it.");
        _isLeaveAsked = true;
    }

    private void Stay()
    {
        if (_isLeaveAsked || (_isFaultSaid && Page is FormPage { IsReady: true }))
        {
            _message.Say("");
            _isFaultSaid = false;
        }

        _isLeaveAsked = false;
    }

    private void Face()
    {
        _isLeaveAsked = _isFaultSaid = false;
        _message.Say("");
        Caption();
        SetNeedsDraw();
    }

    private void Caption()
    {
        var isTyping = Page.TakesTyping;
        _title.Say(Page.Heading, Page.Headline, Dates.Text(_ledger.Today),
            _options.File.Length > 0 ? _options.File : Unnamed);
        _pageKeys.Hints =
        [
            .. Page is TablePage { Opens: { } label } ? [new KeyHint(Key.Enter, "Enter", label)]
                : Array.Empty<KeyHint>(),
            .. KeyHint.Of(Page.Actions),
            .. _desk.HasBelow || Page is TablePage { TakesTyping: true } ? [CommonKeys.Back] : Array.Empty<KeyHint>(),
        ];
        _steadyKeys.Hints =
        [
            CommonKeys.Blank(isTyping), CommonKeys.Help, CommonKeys.Actions,
            .. isTyping ? Array.Empty<KeyHint>() : [CommonKeys.Quit],
            .. isTyping || Page is HelpPage
                ? []
                : KeyHint.Of(_common.Work.Where(key => Page.Actions.All(own => own.Key != key.Key))),
        ];
        _head.Show([.. KeyHint.Of(_common.Screens).Select(key => key with { IsHere = key.Label == _desk.Root?.Name })],
            isTyping);
    }

    private void Saved(Saving saving, Func<Step>? then)
    {
        if (saving is { IsDone: true, Next: { } next })
        {
            Follow(next);
            return;
        }

        if (saving.IsDone)
        {
            _common.LastSaved = saving.Number;
            foreach (var table in _screens.Concat(_desk.Tables).Distinct())
                table.SelectedId = table.IdOf(saving) ?? table.SelectedId;
            Back();
            Try(_desk.Refresh);
            Try(Dress);
            if (Page is FormPage waiting)
                waiting.GoOn(saving.Entry);
            Caption();
        }

        if (saving.IsDone && then is not null)
            Follow(then());
        _message.Say(saving.Sentence, saving.CanBeTakenBack ? TakesBack : "");
        _isFaultSaid = !saving.IsDone;
    }

    private void Find()
    {
        if (Page is HelpPage)
            return;
        var findings = new Findings(_ledger, Page, _screens, _common);
        IReadOnlyList<Finding> found = [];
        _finder = new(typed => Try(() => found = findings.For(typed)) ? found : [], Take);
        Add(_finder);
        _finder.SetFocus();
    }

    private void Take(Finding chosen) => _ = Try(() =>
    {
        CloseFinder();
        foreach (var step in chosen.Steps())
            Follow(step);
    });

    /// <summary>The screen must go black from everywhere; any other key that is not typed closes the list.</summary>
    private void Answer(Key key)
    {
        CloseFinder();
        if (key == Key.F9)
            Blank();
    }

    private void CloseFinder()
    {
        if (_finder is not { } finder)
            return;
        _finder = null;
        Remove(finder);
        finder.Dispose();
        Page.SetFocus();
        SetNeedsDraw();
    }

    /// <summary>
    /// The first time, what lights the screen up again is said before it goes black: afterwards nothing can be read.
    /// </summary>
    private void Blank()
    {
        if (!_isBlankTold)
        {
            _isBlankTold = true;
            _message.Say($"Once more blanks the screen. {Blackout.Warning}");
            return;
        }

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
