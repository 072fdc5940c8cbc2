using Ledger.Terminal.Pages;
using Ledger.Terminal.Quiet;

namespace Ledger.Terminal.Forms;

/// <summary>A field on the screen: Up and Down offer other values, Enter goes on to the next field.</summary>
internal sealed class FieldBox : QuietField
{
    private readonly Action<FormField> _edited;
    private readonly Action _next;
    private bool _isShowing;
    private bool _isAbandoned;

    public FieldBox(FormField field, int width, Action<FormField> edited, Action next)
    {
        Field = field;
        _edited = edited;
        _next = next;
        // Behind the last sign there is a place for the cursor, or the first one would go out of sight.
        Width = width + 1;
        // These keys belong to the form; the base has moves and deletions on them that other keys do as well.
        foreach (var key in FormPage.OwnKeys)
            KeyBindings.Remove(key);
        Show();
        ValueChanged += (_, _) => OnTyped();
    }

    /// <summary>The field behind it.</summary>
    public FormField Field { get; }

    /// <summary>Shows what stands in the field, from its beginning until it has the cursor.</summary>
    public void Show()
    {
        if (Text == Field.Text)
            return;
        _isShowing = true;
        Text = Field.Text;
        InsertionPoint = Text.Length;
        if (!HasFocus)
            ShowBeginning();
        _isShowing = false;
    }

    /// <summary>Another box takes its place: losing the cursor finishes nothing any more.</summary>
    public void Abandon() => _isAbandoned = true;

    /// <summary>Typing goes on where it was, after the box was put in the place of another.</summary>
    public void GoOn()
    {
        SetFocus();
        InsertionPoint = Text.Length;
        ClearAllSelection();
    }

    /// <summary>The base puts the insertion point at the end of what it begins with.</summary>
    public override void EndInit()
    {
        base.EndInit();
        if (!HasFocus)
            ShowBeginning();
    }

    protected override bool OnKeyDown(Key key)
    {
        if (key == Key.Enter)
            _next();
        else if (key == Key.CursorUp || key == Key.CursorDown)
            Turn(key == Key.CursorUp ? Up : -Up);
        else
            return base.OnKeyDown(key);
        return true;
    }

    protected override void OnHasFocusChanged(bool newHasFocus, View? previousFocusedView, View? view)
    {
        base.OnHasFocusChanged(newHasFocus, previousFocusedView, view);
        if (newHasFocus || _isAbandoned)
            return;
        Finish();
        ShowBeginning();
    }

    /// <summary>In a list, Up goes to the one before; for a date or a number, Up means more.</summary>
    private int Up => Field.Kind is FieldKind.Date or FieldKind.Figure ? 1 : -1;

    /// <summary>Only the command scrolls back, and only from where there is something to scroll.</summary>
    private void ShowBeginning()
    {
        InsertionPoint = Text.Length;
        InvokeCommand(Command.LeftStart);
    }

    private void Turn(int by)
    {
        Field.Turn(by);
        Show();
        _edited(Field);
    }

    private void Finish()
    {
        var before = Field.Text;
        Field.Unfilter();
        Field.Complete();
        Show();
        if (before != Field.Text)
            _edited(Field);
    }

    private void OnTyped()
    {
        if (_isShowing)
            return;
        Field.Type(Text);
        _edited(Field);
    }
}
