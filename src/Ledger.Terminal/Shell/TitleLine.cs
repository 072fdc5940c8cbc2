using Ledger.Terminal.Themes;

namespace Ledger.Terminal.Shell;

/// <summary>Where the user is, and what matters there; at the right the day and the file.</summary>
internal sealed class TitleLine : View
{
    private string _left = "";
    private string _headline = "";
    private string _day = "";
    private string _file = "";

    /// <summary>Changes what it says.</summary>
    public void Say(string left, string headline, string day, string file)
    {
        (_left, _headline, _day, _file) = (UserText.Shown(left), UserText.Shown(headline), day, UserText.Shown(file));
        SetNeedsDraw();
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        SetAttributeForRole(Style.Title);
        AddStr(1, 0, _left);
        SetAttributeForRole(Style.Label);
        var headline = _headline.Length == 0 ? "" : $"  {_headline}";
        var right = Right(Viewport.Width - _left.Length - headline.Length - 4);
        AddStr(Viewport.Width - right.Length - 1, 0, right);
        var room = Viewport.Width - _left.Length - right.Length - 3;
        SetAttributeForRole(Style.Text);
        AddStr(1 + _left.Length, 0, headline.Length <= room ? headline : room > 3 ? headline[..(room - 1)] + "…" : "");
        return true;
    }

    /// <summary>The day and the file; of a long path the end is what tells it from others.</summary>
    private string Right(int room)
    {
        if (room < _day.Length)
            return "";
        var forFile = room - _day.Length - 2;
        if (_file.Length <= forFile)
            return $"{_day}  {_file}";
        return forFile < 8 ? _day : $"{_day}  ..{_file[^(forFile - 2)..]}";
    }
}
