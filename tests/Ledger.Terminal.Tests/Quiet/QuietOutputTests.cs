using System.Text;
using Ledger.Terminal.Quiet;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Ledger.Terminal.Tests.Quiet;

/// <summary>What is sent to the terminal, held against a small terminal that reads it.</summary>
public sealed class QuietOutputTests : IDisposable
{
    private const int Columns = 20, Rows = 4;
    private readonly OutputBufferImpl _buffer = new();
    private readonly QuietOutput _output;
    private readonly PaperTerminal _terminal = new(Columns, Rows);
    private readonly List<string> _sent = [];

    public QuietOutputTests()
    {
        _output = new(
            text =>
            {
                _sent.Add(text);
                _terminal.Take(text);
            },
            () => { });
        _buffer.SetSize(Columns, Rows);
        _buffer.CurrentAttribute = new(Color.None, Color.None);
    }

    public void Dispose() => _output.Dispose();

    [Fact]
    public void A_picture_is_one_write()
    {
        Draw(0, 0, "one");
        Draw(3, 2, "two");
        Send();
        Assert.Equal("one", _terminal.Line(0));
        Assert.Equal("   two", _terminal.Line(2));
        var sent = Assert.Single(_sent);
        Assert.StartsWith("\e[?2026h", sent);
        Assert.EndsWith("\e[?2026l", sent);
    }

    [Fact]
    public void The_same_drawn_again_sends_nothing()
    {
        Draw(0, 0, "one");
        Send();
        Draw(0, 0, "one");
        Send();
        Send();
        Assert.Single(_sent);
    }

    [Fact]
    public void Only_what_differs_is_sent()
    {
        Draw(0, 1, "baths and sheets");
        Send();
        Draw(0, 1, "baths xnd sheets");
        Send();
        Assert.Equal("baths xnd sheets", _terminal.Line(1));
        Assert.DoesNotContain("baths", _sent[1]);
        Assert.DoesNotContain("sheets", _sent[1]);
        Assert.Contains("\e[2;7H", _sent[1]);
    }

    [Fact]
    public void A_change_of_colour_alone_is_sent()
    {
        Draw(0, 0, "one");
        Send();
        _buffer.CurrentAttribute = new Attribute(Color.None, Color.None, TextStyle.Reverse);
        Draw(0, 0, "one");
        Send();
        Assert.Contains("\e[7m", _sent[1]);
        Assert.Contains("one", _sent[1]);
    }

    [Fact]
    public void What_was_forgotten_is_sent_whole()
    {
        Draw(0, 0, "one");
        Send();
        _terminal.Clear();
        _output.Forget();
        Send();
        Assert.Equal("one", _terminal.Line(0));
        Assert.Equal(2, _sent.Count);
    }

    [Fact]
    public void Another_size_is_sent_whole()
    {
        Draw(0, 0, "one");
        Send();
        _buffer.SetSize(Columns - 1, Rows);
        Draw(0, 1, "two");
        _terminal.Clear();
        Send();
        Assert.Equal("", _terminal.Line(0));
        Assert.Equal("two", _terminal.Line(1));
    }

    [Fact]
    public void Wide_signs_come_and_go_without_a_trace()
    {
        foreach (var line in new[] { "a日本b", "日a本b", "xyzvwb", "ab日本", "日本日本", "      " })
        {
            Draw(2, 0, line.PadRight(8));
            Send();
            Assert.Equal(("  " + line).TrimEnd(), _terminal.Line(0));
        }
    }

    [Fact]
    public void Whatever_is_drawn_stands_there_in_the_end()
    {
        var random = new Random(7);
        var signs = new[] { "a", "b", " ", "─", "é", "日", "本" };
        var plain = Enumerable.Range(0, Rows).Select(_ => Enumerable.Repeat(" ", Columns).ToArray()).ToArray();
        for (var picture = 0; picture < 300; picture++)
        {
            for (var change = random.Next(6); change >= 0; change--)
            {
                var (row, column) = (random.Next(Rows), random.Next(Columns - 1));
                var sign = signs[random.Next(signs.Length)];
                Put(plain[row], column, sign);
                Draw(0, row, string.Concat(plain[row]));
            }

            if (random.Next(20) == 0)
                _output.Forget();
            Send();
            for (var row = 0; row < Rows; row++)
                Assert.Equal(string.Concat(plain[row]).TrimEnd(), _terminal.Line(row));
        }
    }

    [Fact]
    public void The_cursor_is_sent_when_it_moved_or_a_picture_came_between()
    {
        IOutput output = _output;
        Draw(0, 0, "one");
        Send();
        var cursor = new Cursor { Position = new(2, 1), Style = CursorStyle.BlinkingBar };
        output.SetCursor(cursor);
        Assert.Equal("\e[2;3H\e[5 q\e[?25h", _sent[1]);
        output.SetCursor(cursor);
        Assert.Equal(2, _sent.Count);
        Draw(0, 0, "two");
        Send();
        Assert.Contains("\e[?25l", _sent[2]);
        output.SetCursor(cursor);
        Assert.Equal(4, _sent.Count);
        output.SetCursor(new());
        output.SetCursor(new());
        Assert.Equal(["\e[?25l"], _sent[4..]);
    }

    private static void Put(string[] line, int column, string sign)
    {
        if (line[column].Length == 0)
            line[column - 1] = " ";
        if (column + 1 < Columns && line[column + 1].Length == 0)
            line[column + 1] = " ";
        line[column] = sign;
        if (sign is not ("日" or "本"))
            return;
        if (column + 2 < Columns && line[column + 2].Length == 0)
            line[column + 2] = " ";
        line[column + 1] = "";
    }

    private void Draw(int column, int row, string text)
    {
        _buffer.Move(column, row);
        _buffer.AddStr(text);
    }

    private void Send() => _output.Write(_buffer);

    /// <summary>
    /// As much of a terminal as the output uses: places, signs of one or two columns; styles are skipped.
    /// </summary>
    private sealed class PaperTerminal(int columns, int rows)
    {
        private readonly string[,] _cells = new string[rows, columns];
        private (int Row, int Column) _at;

        public void Clear() => Array.Clear(_cells);

        public string Line(int row)
        {
            var line = new StringBuilder();
            for (var column = 0; column < columns; column++)
                line.Append(_cells[row, column] ?? " ");
            return line.ToString().TrimEnd();
        }

        public void Take(string text)
        {
            for (var i = 0; i < text.Length; i++)
                if (text[i] == '\e')
                {
                    var end = i + 2;
                    while (!char.IsAsciiLetter(text[end]))
                        end++;
                    if (text[end] == 'H')
                    {
                        var place = text[(i + 2)..end].Split(';');
                        _at = (int.Parse(place[0]) - 1, int.Parse(place[1]) - 1);
                    }

                    i = end;
                }
                else
                    Put(text[i].ToString(), text[i] >= '\u2E80' ? 2 : 1);
        }

        private void Put(string sign, int width)
        {
            var (row, column) = _at;
            if (_cells[row, column] == "")
                _cells[row, column - 1] = " ";
            if (column + width < columns && _cells[row, column + width] == "")
                _cells[row, column + width] = " ";
            _cells[row, column] = sign;
            if (width == 2)
                _cells[row, column + 1] = "";
            _at = (row, column + width);
        }
    }
}
