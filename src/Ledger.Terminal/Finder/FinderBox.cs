using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pictures;
using Ledger.Terminal.Quiet;
using Ledger.Terminal.Themes;
using Terminal.Gui.Drawing;

namespace Ledger.Terminal.Finder;

/// <summary>
/// The list of actions over the screen: a few typed letters narrow it, Enter takes what is selected. It lies over the
/// page without taking its place, so that what it leads to applies to what is selected there.
/// </summary>
internal sealed class FinderBox : View
{
    private const int Broadest = 100;
    private readonly Func<string, IReadOnlyList<Finding>> _find;
    private readonly FoundList _list = new() { Y = 1, Width = Dim.Fill(), Height = Dim.Fill() };

    public FinderBox(Func<string, IReadOnlyList<Finding>> find, Action<Finding> take)
    {
        _find = find;
        CanFocus = true;
        Title = "Type a few letters of what is to be done, or a name";
        BorderStyle = LineStyle.Single;
        X = Pos.Center();
        Y = 1;
        Width = Dim.Func(_ => Math.Min(Broadest, (SuperView?.Viewport.Width ?? Broadest) - 2));
        Height = Dim.Fill(2);
        var typed = new SearchField(_list, () =>
        {
            if (_list.Selected is { } chosen)
                take(chosen);
        }) { Width = Dim.Fill() };
        typed.ValueChanged += (_, _) => _list.Show(_find(typed.Text));
        Add(typed, _list);
        _list.Show(_find(""));
    }

    /// <summary>What is typed; the arrows move in the list below.</summary>
    private sealed class SearchField(FoundList list, Action take) : QuietField
    {
        protected override bool OnKeyDown(Key key)
        {
            if (key == Key.CursorUp)
                list.Move(-1);
            else if (key == Key.CursorDown)
                list.Move(1);
            else if (key == Key.PageUp)
                list.Move(-list.Viewport.Height);
            else if (key == Key.PageDown)
                list.Move(list.Viewport.Height);
            else if (key == Key.Enter)
                take();
            else
                return base.OnKeyDown(key) || key == Key.Tab || key == Key.Tab.WithShift;
            return true;
        }
    }

    /// <summary>What was found, the nearest first.</summary>
    private sealed class FoundList : View
    {
        private const int KeyWidth = 7;
        private const int NameWidth = 20;
        private const int LeastForWhole = 8;
        private const int MostOfWhole = 4;
        private IReadOnlyList<Finding> _found = [];
        private int _row;
        private int _top;

        /// <summary>The selected one; null when nothing is found.</summary>
        public Finding? Selected => _found.Count > 0 ? _found[_row] : null;

        public void Show(IReadOnlyList<Finding> found)
        {
            _found = found;
            _row = 0;
            Move(0);
        }

        public void Move(int by)
        {
            _row = Math.Clamp(_row + by, 0, Math.Max(0, _found.Count - 1));
            SetNeedsDraw();
        }

        protected override bool OnDrawingContent(DrawContext? context)
        {
            var whole = Whole();
            var height = Viewport.Height - whole.Count;
            _top = Math.Clamp(_top, Math.Max(0, _row - height + 1), _row);
            for (var line = 0; line < height; line++)
            {
                var row = _top + line;
                var isSelected = row == _row && row < _found.Count;
                SetAttributeForRole(isSelected ? Style.Selected : Style.Text);
                AddStr(0, line, Line(row).PadRight(Math.Max(0, Viewport.Width)));
                if (Bar.At(line) is not ' ' and var sign)
                    AddStr(Viewport.Width - 1, line, sign.ToString());
            }

            SetAttributeForRole(Style.Label);
            for (var line = 0; line < whole.Count; line++)
                AddStr(0, height + line, whole[line].PadRight(Math.Max(0, Viewport.Width)));
            return true;
        }

        private EdgeBar Bar => new(_top, _found.Count, Viewport.Height - Whole().Count);

        /// <summary>The selected one goes along, so that it stays in sight.</summary>
        private void ScrollTo(int top)
        {
            _top = top;
            Move(Math.Clamp(_row, top, top + Math.Max(1, Bar.Height) - 1) - _row);
        }

        protected override bool OnMouseEvent(Mouse mouse)
        {
            if (mouse.Position is { } bar && bar.X >= Viewport.Width - 1 && Bar.IsNeeded)
            {
                if (Bar.Pressed(mouse.Flags, bar.Y) is { } top)
                    ScrollTo(top);
            }
            else if (mouse.Flags.HasFlag(MouseFlags.WheeledDown))
                Move(1);
            else if (mouse.Flags.HasFlag(MouseFlags.WheeledUp))
                Move(-1);
            else if (mouse.IsSingleClicked && mouse.Position is { } at && _top + at.Y < _found.Count)
                Move(_top + at.Y - _row);
            else
                return false;
            return true;
        }

        /// <summary>What the list has no room for of the selected one, whole, under the list.</summary>
        private IReadOnlyList<string> Whole() =>
            Selected is { } selected && Viewport.Height >= LeastForWhole && Line(_row).EndsWith('…')
                ? [.. Paragraph.Of($" {selected.Name}: {About(selected)}", Viewport.Width, 1).Take(MostOfWhole)] : [];

        private static string About(Finding found) =>
            found.Place.Length > 0 ? $"{found.Place}: {found.Meaning}" : found.Meaning;

        private string Line(int row)
        {
            if (row >= _found.Count)
                return row == 0 ? "Nothing is found by that." : "";
            var found = _found[row];
            var line = $" {found.Key.PadRight(KeyWidth)}{found.Name.PadRight(NameWidth - 1)} {About(found)}";
            // The last column is for the bar.
            var width = Math.Max(1, Viewport.Width - 1);
            return line.Length > width ? line[..(width - 1)] + "…" : line;
        }
    }
}
