using System.Text;

namespace Ledger.App.Output;

/// <summary>Text for people, no line of it wider than a width: a longer one is broken between words.</summary>
/// <param name="writer">Where it goes.</param>
/// <param name="width">The columns that it may take.</param>
internal sealed class FittedText(TextWriter writer, int width) : TextWriter
{
    private readonly StringBuilder _line = new();

    public override Encoding Encoding => writer.Encoding;

    public override string NewLine => writer.NewLine;

    public override void Write(char value)
    {
        if (value == '\n')
            End();
        else
            _line.Append(value);
    }

    public override void Write(string? value)
    {
        foreach (var sign in value ?? "")
            Write(sign);
    }

    public override void WriteLine() => End();

    public override void WriteLine(string? value)
    {
        Write(value);
        End();
    }

    /// <summary>Writes what is left of a line that was not ended.</summary>
    protected override void Dispose(bool disposing)
    {
        if (_line.Length > 0)
            writer.Write(_line.ToString());
        _line.Clear();
        base.Dispose(disposing);
    }

    private void End()
    {
        var line = _line.ToString();
        _line.Clear();
        if (line.Length <= width)
        {
            writer.WriteLine(line);
            return;
        }

        var indent = line[..(line.Length - line.TrimStart().Length)];
        foreach (var part in Wrapping.Of(line.TrimStart(), width, indent, indent.Length > 0 ? indent + "  " : ""))
            writer.WriteLine(part);
    }
}
