using System.Text;

namespace Ledger.App.Output;

/// <summary>
/// Text on its way out of the program: what could steer a terminal, from an older file or a quoted cell, is written by
/// its number, as \u001B. JSON means the same character by it, so a program that reads the output still gets the text
/// as it stands in the file.
/// </summary>
/// <param name="writer">Where it goes.</param>
internal sealed class ShownText(TextWriter writer) : TextWriter
{
    public override Encoding Encoding => writer.Encoding;

    public override string NewLine => writer.NewLine;

    /// <summary>
    /// A return by itself is the program's own, for a line that is written over; what users wrote comes in longer
    /// texts.
    /// </summary>
    public override void Write(char value)
    {
        if (value == '\r')
            writer.Write(value);
        else
            Write(value.ToString());
    }

    public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

    public override void Write(ReadOnlySpan<char> buffer) => Write(buffer.ToString());

    public override void Write(string? value)
    {
        if (value is not null)
            writer.Write(UserText.Shown(value));
    }

    public override void WriteLine() => writer.WriteLine();

    public override void WriteLine(string? value)
    {
        Write(value);
        writer.WriteLine();
    }

    public override void Flush() => writer.Flush();
}
