using System.Text;
using Ledger.Terminal.Shell;

namespace Ledger.Terminal.Tests.Forms;

/// <summary>
/// What is shown can be taken along: row, table or page, as text or CSV, to a file or the terminal's clipboard; it is
/// asked first.
/// </summary>
public sealed class CopyTests : OnASmallLedger
{
    private readonly FakePaper _paper = new();

    [Fact]
    public void Ctrl_C_asks_first_and_shows_what_is_copied()
    {
        var screen = Look(paper: _paper);

        var asked = screen.Type("2").Press(Key.C.WithCtrl).Text;

        Assert.StartsWith(" Copy of Shelf", screen.Title);
        Assert.Matches("Copy row +as text +to clipboard", asked);
        Assert.Contains("Into the terminal's clipboard, ", asked);
        Assert.Matches("Item +fen80", asked);
        Assert.Empty(_paper.Files);
        Assert.Contains("clipboard", screen.Press(Key.F8).Text);
        Assert.StartsWith(" Shelf", screen.Title);
    }

    [Fact]
    public void A_table_is_copied_as_csv_into_a_file_with_the_rows_that_are_found()
    {
        var screen = Look(paper: _paper);
        screen.Type("2/").Type("tarn").Press(Key.Enter, Key.C.WithCtrl);
        Fill(screen, ("Copy", "table"), ("as", "csv"), ("to", "file"), ("File", "shelf.csv"));

        screen.Press(Key.F8);

        var lines = _paper.Files["shelf.csv"].Split("\r\n");
        Assert.StartsWith("Item,On hand,Good until,State", lines[0]);
        Assert.StartsWith("tarnfix,", lines[1]);
        Assert.Equal("", lines[2]);
        Assert.Contains("It lies in shelf.csv.", screen.Text);
        Assert.StartsWith(" Shelf", screen.Title);
    }

    [Fact]
    public void A_page_is_copied_as_text_with_its_table_and_its_details()
    {
        var screen = Look(paper: _paper);
        screen.Type("3").Press(Key.C.WithCtrl);
        Fill(screen, ("Copy", "page"), ("to", "file"), ("File", "baths.txt"));

        screen.Press(Key.F8);

        Assert.StartsWith("Baths\n\nBath", _paper.Files["baths.txt"]);
        Assert.Contains("F4", _paper.Files["baths.txt"]);
        Assert.Contains("Bath F4: fixer for film\n", _paper.Files["baths.txt"]);
        Assert.All(_paper.Files["baths.txt"].Split('\n'), line => Assert.Equal(line.TrimEnd(), line));
    }

    [Fact]
    public void A_file_that_is_there_already_is_not_replaced_and_the_form_stays()
    {
        _paper.Files["x"] = "old";
        var screen = Look(paper: _paper);
        screen.Type("2").Press(Key.C.WithCtrl);
        Fill(screen, ("to", "file"), ("File", "x"));

        Assert.Contains("x is there already.", screen.Press(Key.F8).Text);
        Assert.StartsWith(" Copy of Shelf", screen.Title);
        Assert.Equal("old", _paper.Files["x"]);
    }

    [Fact]
    public void What_is_too_much_for_a_clipboard_is_sent_to_a_file()
    {
        for (var i = 0; i < 300; i++)
            Ledger.Did(new NoticeSnooze
            {
                Key = Some.Key(), Date = Some.Today, Notice = NoticeKind.BelowMinimum, About = ["syrup"],
                Until = new(2026, 4, 1), Reason = new('x', 190),
            });
        var screen = Look(paper: _paper);
        screen.Type("6").Press(Key.C.WithCtrl);
        Fill(screen, ("Copy", "table"));

        Assert.Matches("It has [0-9]+ kB; a terminal's clipboard takes 56 kB: copy it to a file",
            screen.Press(Key.F8).Text);
    }

    [Fact]
    public void The_sequence_is_osc_52_with_the_text_in_base_64()
    {
        var sequence = Clipboard.Sequence("61 ml of syrup, 1+49");
        Assert.StartsWith("\e]52;c;", sequence);
        Assert.EndsWith("\a", sequence);
        Assert.Equal("61 ml of syrup, 1+49", Encoding.UTF8.GetString(Convert.FromBase64String(sequence[7..^1])));
    }

    [Fact]
    public void What_is_copied_goes_to_the_terminal_and_can_be_put_in_again()
    {
        var sent = new List<string>();
        var clipboard = new Clipboard(sent.Add);
        Assert.True(clipboard.TrySetClipboardData("mill at noon"));
        Assert.Equal([Clipboard.Sequence("mill at noon")], sent);
        Assert.True(clipboard.TryGetClipboardData(out var text));
        Assert.Equal("mill at noon", text);
    }

    private static void Fill(Screen screen, params (string Label, string Text)[] fields)
    {
        var page = Assert.IsType<FormPage>(screen.Shell.Page);
        foreach (var (label, text) in fields)
            page.Form.Fields.Single(field => field.Label == label).Type(text);
        page.Refresh();
    }
}
