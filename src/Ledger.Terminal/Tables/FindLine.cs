using Ledger.Terminal.Quiet;
using Ledger.Terminal.Themes;

namespace Ledger.Terminal.Tables;

/// <summary>
/// The line above a table in which the looked-for words are typed, with the count of what is shown beside them.
/// </summary>
internal sealed class FindLine : View
{
    private const string Label = "Find ";
    private const int Widest = 40;
    private readonly WordsField _words;
    private string _count = "";

    /// <summary>Makes it.</summary>
    /// <param name="find">What typing does; it gets the words.</param>
    /// <param name="leave">Goes to the table.</param>
    public FindLine(Action<string> find, Action leave)
    {
        CanFocus = true;
        Visible = false;
        Height = 1;
        _words = new(leave) { X = Label.Length,
            Width = Dim.Func(_ => Math.Min(Widest, Math.Max(8, Viewport.Width / 2))) };
        _words.ValueChanged += (_, _) => find(_words.Text);
        Add(_words);
    }

    /// <summary>Opens it, to type.</summary>
    public void Open()
    {
        Visible = true;
        SetFocus();
        _words.SetFocus();
        _words.SelectAll();
    }

    /// <summary>Empties and closes it.</summary>
    public void Close()
    {
        _words.Text = "";
        Visible = false;
    }

    /// <summary>Says how many rows are shown.</summary>
    public void Count(int shown, int all)
    {
        _count = $"{shown} of {all}";
        SetNeedsDraw();
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        SetAttributeForRole(Style.Heading);
        AddStr(0, 0, Label);
        SetAttributeForRole(Style.Label);
        AddStr(Label.Length + _words.Frame.Width + 2, 0, _count);
        return true;
    }

    /// <summary>What is typed; Enter and Down go on to what was found.</summary>
    private sealed class WordsField(Action leave) : QuietField
    {
        protected override bool OnKeyDown(Key key)
        {
            if (key != Key.Enter && key != Key.CursorDown && key != Key.Tab)
                return base.OnKeyDown(key);
            leave();
            return true;
        }
    }
}
