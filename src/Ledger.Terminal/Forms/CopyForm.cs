using System.Text;
using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>
/// A row, table or page is copied, into a file or into the clipboard of the terminal, once it was seen what that is.
/// </summary>
internal sealed class CopyForm : Form
{
    private const string Row = "row", Table = "table", Whole = "page", Plain = "text", Csv =
        "csv", Clipboard = "clipboard", File = "file";

    /// <summary>
    /// What terminals take at once, in bytes before they are encoded (from memory: some take no more than 74,994
    /// characters).
    /// </summary>
    private const int MostForClipboard = 56_000;

    private const int LinesShown = 12;

    private readonly CopySource _source;
    private readonly IPaper _paper;
    private readonly FormField _what, _as, _to;
    private readonly FormField _file = new("File", 60) { Hint = "A file that is not there yet." };

    /// <param name="source">What can be copied.</param>
    /// <param name="paper">What writes CSV and files.</param>
    public CopyForm(CopySource source, IPaper paper)
    {
        (_source, _paper) = (source, paper);
        _what = new("Copy", 8, FieldKind.Choice)
        {
            Hint = "The selected row, the table with the rows that are shown, or all that is read on the page.",
            Choices = () => source.Table is null
                ? [Whole]
                : source.Row.Count == 0 ? [Table, Whole] : [Row, Table, Whole],
        };
        _as = new("as", 6, FieldKind.Choice)
        {
            Hint = "Text as it is read, or CSV for a spreadsheet.",
            Choices = () => _what.Text == Whole ? [Plain] : [Plain, Csv],
        };
        _to = new("to", 10, FieldKind.Choice)
        {
            Hint = "The terminal's clipboard (by the sequence OSC 52, which some terminals ask about or refuse), or a "
                + "file.",
            Choices = () => [Clipboard, File],
        };
        _what.Begin(_what.Choices().First());
        _as.Begin(Plain);
        _to.Begin(Clipboard);
    }

    public override string Title => $"Copy of {_source.Name}";

    public override IReadOnlyList<string> Purpose =>
        ["What is shown is copied as text or as CSV. Nothing is copied before it is said here what."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows =>
        [[_what, _as, _to], .. _to.Text == File ? [[_file]] : Array.Empty<FormField[]>()];

    public override string SaveLabel => "Copy";

    public override bool IsTouched => false;

    public override Verdict Judge()
    {
        List<string> problems =
        [
            .. new[] { _what, _as, _to }.Where(field => !field.Choices().Contains(field.Text))
                .Select(field =>
                    $"{field.Label}: found \"{field.Text}\"; accepted is {string.Join(" or ", field.Choices())}"),
            .. _to.Text == File && _file.IsEmpty
                ? ["File: found nothing; accepted is the name of a file that is not there yet"]
                : Array.Empty<string>(),
        ];
        if (problems.Count > 0)
            return new Incomplete(problems);
        var text = Text();
        return _to.Text == Clipboard && Encoding.UTF8.GetByteCount(text) is > MostForClipboard and var bytes
            ? new Incomplete(
                [$"it has {bytes / 1000} kB; a terminal's clipboard takes {MostForClipboard / 1000} kB: copy it to a "
                    + "file"])
            : new Copyable(text, _to.Text == Clipboard ? null : _file.Text.Trim(), LinesShown);
    }

    public override Saving Save() => Judge() switch
    {
        Copyable { File: null } ready => new(true, 0, "") { Next = new ClipboardStep(ready.Text) },
        Copyable ready => new(true, 0, "") { Next = new FileStep(ready.Text, ready.File!) },
        Incomplete incomplete => Saving.Not(ScreenText.Sentence(incomplete.Problems[0])),
        _ => Saving.Not("Nothing was copied."),
    };

    private string Text() => (_what.Text, _as.Text) switch
    {
        (Row, Csv) => _paper.Csv(_source.Headings, _source.Row),
        (Table, Csv) => _paper.Csv(_source.Headings, _source.Rows),
        (Row, _) => _source.RowText,
        (Table, _) => _source.TableText,
        _ => _source.PageText,
    };
}

/// <summary>It can be copied.</summary>
/// <param name="Text">What.</param>
/// <param name="File">Into which file; null for the clipboard.</param>
/// <param name="LinesShown">How many lines of it are shown.</param>
internal sealed record Copyable(string Text, string? File, int LinesShown) : Verdict
{
    public override IReadOnlyList<Block> Blocks
    {
        get
        {
            var lines = Text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');
            var more = lines.Length > LinesShown
                ? new[] { $"… and {Counted.Of(lines.Length - LinesShown, "line")} more" }
                : [];
            return
            [
                new(
                    $"Into {(File is null ? "the terminal's clipboard" : File)}, {Counted.Of(lines.Length, "line")}:",
                    width => lines.Take(LinesShown)
                        .Select(line => line.Length > width ? line[..(width - 1)] + "…" : line).Concat(more)),
            ];
        }
    }
}
