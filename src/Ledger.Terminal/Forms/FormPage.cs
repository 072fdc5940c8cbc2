using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;
using Ledger.Terminal.Pictures;
using Terminal.Gui.Views;

namespace Ledger.Terminal.Forms;

/// <summary>A form on the screen: the fields above, below them what saving would change, live.</summary>
internal sealed class FormPage : Page
{
    private const int LeastBelow = 6;

    /// <summary>What a line holds before the page has a size.</summary>
    private const int NarrowWidth = 78;

    /// <summary>As many lines of cautions as leave room for the fields; F1 has them all.</summary>
    private const int MostCautions = 3;

    private static readonly TimeSpan KeepAfter = TimeSpan.FromSeconds(1);

    /// <summary>How long no key was pressed before what takes long is worked out.</summary>
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(300);

    private readonly Form _form;
    private readonly Action<Saving> _saved;
    private readonly Label _cautions = new() { X = 1, Width = Dim.Fill(1), Height = 0 };
    private readonly FieldsPane _fields = new() { X = 1 };
    private readonly Label _hint = new() { X = 1, Width = Dim.Fill(1), Height = 1 };
    private readonly TextPane _outcome = new() { X = 1, Width = Dim.Fill(), Height = Dim.Fill() };
    private readonly List<(FormField Field, View Box)> _boxes = [];
    private readonly ChoiceList _choices;
    private View? _save;
    private int _rows;
    private bool _isEntered;
    private bool _isBuilding;
    private bool _isAsked;
    private Verdict? _verdict;
    private FormField? _resting;
    private readonly string _blank;
    private bool _isKeepDue;
    private bool _isGone;
    private int _judged;

    public FormPage(Form form, Action<Saving> saved)
    {
        _form = form;
        _saved = saved;
        _blank = form.Content();
        _cautions.Height = Dim.Func(_ => CautionLines);
        _fields.Y = Pos.Bottom(_cautions);
        _fields.Width = Dim.Fill();
        _fields.Height =
            Dim.Func(_ => Math.Min(_rows + 1, Math.Max(3, Viewport.Height - LeastBelow - 2 - CautionLines)));
        _hint.Y = Pos.Bottom(_fields);
        _hint.Height = Dim.Func(_ => _hint.Text.Length > Viewport.Width - 2 ? 2 : 1);
        var rule = new Rule { X = 1, Y = Pos.Bottom(_hint), Width = Dim.Fill(1), Height = 1 };
        _outcome.Y = Pos.Bottom(rule);
        _outcome.TabStop = TabBehavior.NoStop;
        _choices = new(Choose) { Visible = false, CanFocus = false };
        Add(_cautions, _fields, _hint, rule, _outcome, _choices);
        ViewportChanged += (_, _) => ShowCautions();
        Build(null);
        Judge();
    }

    /// <summary>The keys of every form beside the function keys.</summary>
    public static IReadOnlyList<Key> OwnKeys { get; } = [Key.D.WithCtrl, Key.N.WithCtrl, Key.E.WithCtrl,
        Key.O.WithCtrl];

    public override string Heading => _form.Title;

    public override string Example => _form.Example;

    public override IEnumerable<string> Labels => _form.Fields.SelectMany(one => new[] { one.Label, one.Hint });

    public override IReadOnlyList<string> Purpose =>
    [
        .. _form.Purpose,
        "Tab or Enter goes to the next field, Up and Down offer other values, and what is below the line shows what "
            + "would come of it, every bottle, bath and box before and after. Nothing is written until then.",
    ];

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        new(Key.F8, "F8", _form.SaveLabel, "does it, in one step (Ctrl+S too)", Saves),
        .. _form.Keys.Select(key => new ScreenAction(key.Key, key.Key.ToString(), key.Label,
            key.Meaning, _ => Press(key))),
        .. _form is { Difference: null, Anyway: null } ? Array.Empty<ScreenAction>()
            : [new(Key.F6, "F6", "It is so",
                "answers a question of the program: it is so, or the book was wrong and the difference is "
                    + "booked", _ => Agree())],
        .. _form.LastDay is { } day ? [new(day.Key, day.Key.ToString(), day.Label, day.Meaning, _ => Press(day))]
            : Array.Empty<ScreenAction>(),
        .. Current is { Makes: { } what } ? [Made(what)] : Array.Empty<ScreenAction>(),
        .. _verdict is Rejected { Refusal.Entry: { } entry } ? [new(
            Key.O.WithCtrl, "Ctrl+O", $"Entry {entry}", "opens the entry that stands in the way; this form waits",
            _ => new EntryStep(entry))]
            : Array.Empty<ScreenAction>(),
        .. _form.IsTouched && _form.ParkedAs is not null
            ? [new(Key.E.WithCtrl, "Ctrl+E", "Empty", "empties the form, as it was when it was new", _ => Empty())]
            : Array.Empty<ScreenAction>(),
    ];

    public override bool TakesTyping => true;

    public override bool Park() => _form.Park();

    /// <summary>Puts back what was left unsaved.</summary>
    public void PutBack(string content)
    {
        _form.PutBack(content);
        Build(Current);
        Judge();
    }

    /// <summary>Goes on with what was made for the field with the cursor.</summary>
    public void GoOn(Entry? made)
    {
        var field = _resting ?? Current;
        _form.Renew(made, field);
        Build(field);
        Judge();
        KeepSoon();
    }

    /// <summary>The form.</summary>
    public Form Form => _form;

    /// <summary>Whether it could be saved as it stands.</summary>
    public bool IsReady { get; private set; }

    public override void Refresh()
    {
        _form.Renew(null, null);
        ShowFields();
        Judge();
    }

    public override void Rest() => _resting = Current;

    public override void Resume()
    {
        if (_resting is { } field)
            Focus(field);
    }

    protected override bool OnKeyDown(Key key)
    {
        if (key == Key.S.WithCtrl)
            Save();
        else if (key == Key.Tab || key == Key.CursorDown)
            Turn(1);
        else if (key == Key.Tab.WithShift || key == Key.CursorUp)
            Turn(-1);
        else
            return _outcome.Page(key);
        return true;
    }

    /// <summary>
    /// The cursor begins in the field that is most often written, and later goes back to where it was.
    /// </summary>
    protected override void OnHasFocusChanged(bool newHasFocus, View? previousFocusedView, View? focusedView)
    {
        base.OnHasFocusChanged(newHasFocus, previousFocusedView, focusedView);
        if (!newHasFocus || _isEntered)
            return;
        _isEntered = true;
        Focus(_form.First);
    }

    protected override void Dispose(bool disposing)
    {
        _isGone = true;
        base.Dispose(disposing);
    }

    private ScreenAction Made(string what) => new(
        Key.N.WithCtrl, "Ctrl+N", $"New {what}",
        $"writes down a new {what} for the field with the cursor, and goes on "
            + "here", _ => Current is { } field && _form.Maker(field) is { } maker ? new FormStep(maker) : null);

    private Step? Empty()
    {
        _form.PutBack(_blank);
        Build(_form.First);
        Judge();
        _form.Park();
        return null;
    }

    /// <summary>What is typed outlives a crash, but no letter waits for the disk.</summary>
    private void KeepSoon()
    {
        if (_isKeepDue || _form.ParkedAs is null)
            return;
        _isKeepDue = true;
        _ = App?.AddTimeout(KeepAfter, () =>
        {
            _isKeepDue = false;
            if (!_isGone)
                _form.Park();
            return false;
        });
    }

    private FormField? Current => _boxes.Find(box => box.Box.HasFocus).Field;

    private void Build(FormField? focus)
    {
        _isBuilding = true;
        foreach (var box in _boxes.Select(box => box.Box).OfType<FieldBox>())
            box.Abandon();
        foreach (var view in _fields.SubViews.ToList())
        {
            _fields.Remove(view);
            view.Dispose();
        }

        _boxes.Clear();
        _save = null;
        var rows = _form.Rows;
        var labels = FieldRows.LabelsOf(rows);
        for (var row = 0; row < rows.Count; row++)
            AddRow(rows[row], row, labels);
        _rows = rows.Count;
        var save = new PressBox(() => $"[ {_form.SaveLabel} ]", Save, Save)
        {
            X = labels, Y = _rows, Width = _form.SaveLabel.Length + 4, Height = 1, CanFocus = true,
        };
        save.HasFocusChanged += (_, e) => OnFocus("", _rows, e.NewValue);
        _fields.Add(save);
        _save = save;
        _fields.Hold(_rows + 1);
        SetNeedsLayout();
        _isBuilding = false;
        if (focus is not null)
            Focus(focus);
    }

    private void AddRow(IReadOnlyList<FormField> fields, int row, int labels)
    {
        var column = 0;
        foreach (var field in fields)
        {
            var at = FieldRows.BoxAt(field, column, labels);
            if (field.Kind != FieldKind.Tick)
                _fields.Add(new Label { Text = field.Label, X = column, Y = row, Width = at - column,
                    Height = 1, CanFocus = false });
            View box = field.Kind != FieldKind.Tick ? new FieldBox(field, FieldRows.WidthOf(field, at), Edited, Next)
                : new PressBox(() => $"[{(field.IsTicked ? "x" : " ")}] {field.Label}", () => Tick(field), Next)
                {
                    Field = field, Width = field.Label.Length + 4, Height = 1, CanFocus = true,
                };
            (box.X, box.Y) = (at, row);
            box.HasFocusChanged += (_, e) => OnFocus(field.Hint, row, e.NewValue);
            _fields.Add(box);
            _boxes.Add((field, box));
            column = FieldRows.Behind(field, at);
        }
    }

    /// <summary>
    /// While the fields are built again, the cursor falls from one that goes to the next, which is not to be scrolled
    /// to.
    /// </summary>
    private void OnFocus(string hint, int row, bool hasFocus)
    {
        if (!hasFocus || _isBuilding)
            return;
        _hint.Text = hint;
        _choices.Visible = false;
        OnTurned();
        SetNeedsLayout();
        _fields.Reveal(row);
    }

    private void Edited(FormField field)
    {
        _form.Edited(field);
        if (_form.Fields.SequenceEqual(_boxes.Select(box => box.Field)))
            ShowFields();
        else
        {
            Build(field);
            (_boxes.Find(box => box.Field == field).Box as FieldBox)?.GoOn();
        }

        if (field.Kind == FieldKind.Tick)
            Judge();
        else
            JudgeSoon();
        ShowChoices(field);
        KeepSoon();
        OnTouched();
        OnTurned();
    }

    /// <summary>The list closes before the form is left.</summary>
    public override bool Stop()
    {
        var wasOpen = _choices.Visible;
        _choices.Visible = false;
        return wasOpen;
    }

    private void ShowChoices(FormField field)
    {
        if (field.Kind != FieldKind.Choice || _boxes.Find(one => one.Field == field).Box is not { HasFocus: true } box)
            return;
        var below = _fields.Frame.Y + box.Frame.Y - _fields.Viewport.Y + 1;
        _choices.Open(field, _fields.Frame.X + box.Frame.X, below, Viewport.Height - below);
    }

    private void Choose(string name)
    {
        if (Current is not { } field)
            return;
        field.Type(name);
        Edited(field);
        _choices.Visible = false;
    }

    private void ShowFields()
    {
        foreach (var (_, box) in _boxes)
            if (box is FieldBox shown)
                shown.Show();
    }

    private void Judge() => Show(_form.Judge());

    /// <summary>
    /// What a key makes of the form is shown with the key, unless all that happened since has to be worked out for it:
    /// that is done once, when the typing pauses.
    /// </summary>
    private void JudgeSoon()
    {
        if (_form.JudgeAtOnce() is { } verdict)
        {
            Show(verdict);
            return;
        }

        var judged = ++_judged;
        _ = App?.AddTimeout(Pause, () =>
        {
            if (!_isGone && judged == _judged)
                Judge();
            return false;
        });
    }

    private void Show(Verdict verdict)
    {
        _judged++;
        _verdict = verdict;
        (IsReady, _isAsked) = (_verdict is Ready, false);
        ShowCautions();
        _outcome.Show([.. _verdict.Blocks, .. Mends(_verdict)]);
    }

    /// <summary>
    /// The cautions stand above the fields from the first moment; an item that is named adds its own.
    /// </summary>
    private void ShowCautions()
    {
        var width = Viewport.Width > 2 ? Viewport.Width - 2 : NarrowWidth;
        var text = string.Join('\n',
            _form.Cautions.SelectMany(caution => Paragraph.Of($"! {caution}", width, 2)).Take(MostCautions));
        if (text == _cautions.Text)
            return;
        _cautions.Text = text;
        SetNeedsLayout();
    }

    private int CautionLines => _cautions.Text.Length == 0 ? 0 : _cautions.Text.Split('\n').Length;

    /// <summary>What is not there yet can be made from here, without leaving what was typed.</summary>
    private IEnumerable<Block> Mends(Verdict verdict)
    {
        var made = verdict is Ready ? null : _form.Fields.FirstOrDefault(field => field.IsUnknown);
        List<string> ways =
        [
            .. made is null
                ? []
                : new[] { $"  Ctrl+N in {made.Label} writes down a new {made.Makes}; this form waits and goes on with "
                    + "it." },
            .. verdict is Rejected { Refusal: var refusal }
                ? [$"  {Mending.Of(refusal, _form.Difference is not null)}"]
                : Array.Empty<string>(),
        ];
        return ways.Count == 0 ? [] : [Block.Of("What mends it", ways)];
    }

    private void Next() => Turn(1);

    /// <summary>
    /// Through all fields and the saving, round and round: no key leads to where nothing can be typed.
    /// </summary>
    private void Turn(int by)
    {
        List<View> stops = [.. _boxes.Select(box => box.Box), _save!];
        var here = stops.FindIndex(stop => stop.HasFocus);
        stops[here < 0 ? 0 : (here + by + stops.Count) % stops.Count].SetFocus();
    }

    private void Focus(FormField field) => _boxes.Find(box => box.Field == field).Box?.SetFocus();

    private Step? Press(FormKey key)
    {
        var focus = key.Press(Current) ?? Current;
        Build(focus);
        Judge();
        return null;
    }

    /// <summary>Answers what was asked; when it was asked at saving, that is all that was missing.</summary>
    private Step? Agree()
    {
        var isDoubt = _verdict is Rejected { Refusal.Kind: RefusalKind.Doubtful };
        if ((isDoubt ? _form.Anyway : _form.Difference ?? _form.Anyway) is not { } tick)
            return null;
        var wasAsked = _isAsked;
        Tick(tick);
        if (wasAsked && isDoubt && IsReady)
            Save();
        return null;
    }

    private Step? Tick(FormField tick)
    {
        tick.Tick();
        Edited(tick);
        _fields.SetNeedsDraw();
        return null;
    }

    private Step? Saves(int row)
    {
        Save();
        return null;
    }

    private void Save()
    {
        foreach (var field in _form.Fields)
            field.Complete();
        ShowFields();
        Judge();
        _isAsked = !IsReady;
        _saved(_form.Save());
    }
}
