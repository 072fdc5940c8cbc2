using System.Text;

namespace Ledger.Exchange.Import.Rows;

/// <summary>
/// A file's text, read strictly as UTF-8 (a byte order mark is skipped). Anything else stops the reading.
/// </summary>
internal sealed class PlainText(Stream stream) : TextReader
{
    private const int PeekSize = 64 * 1024;

    private readonly StreamReader _text = new(
        stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: true, throwOnInvalidBytes: true),
        detectEncodingFromByteOrderMarks: false, bufferSize: 16 * 1024, leaveOpen: true);

    private string _peeked = "";
    private int _given;

    /// <summary>The first line that is not empty, without taking it; at most the start of a very long one.</summary>
    public string PeekLine()
    {
        var buffer = new char[PeekSize];
        _peeked = new(buffer, 0, Checked(_text.ReadBlock, buffer));
        var line = _peeked.AsSpan().TrimStart("\r\n");
        var end = line.IndexOfAny('\r', '\n');
        return (end < 0 ? line : line[..end]).ToString();
    }

    public override int Read(Span<char> buffer)
    {
        if (_given == _peeked.Length)
            return Checked(_text.Read, buffer);
        var count = Math.Min(buffer.Length, _peeked.Length - _given);
        _peeked.AsSpan(_given, count).CopyTo(buffer);
        _given += count;
        return count;
    }

    public override int Read(char[] buffer, int index, int count) => Read(buffer.AsSpan(index, count));

    public override int Read()
    {
        Span<char> one = stackalloc char[1];
        return Read(one) == 0 ? -1 : one[0];
    }

    protected override void Dispose(bool disposing)
    {
        _text.Dispose();
        base.Dispose(disposing);
    }

    private static int Checked(SpanRead read, Span<char> buffer)
    {
        try
        {
            var count = read(buffer);
            return buffer[..count].Contains('\0') ? throw new NotTextException("a NUL byte") : count;
        }
        catch (DecoderFallbackException)
        {
            throw new NotTextException("bytes that are not UTF-8");
        }
    }

    private delegate int SpanRead(Span<char> buffer);
}

/// <summary>The file holds something that is no text; the message names it.</summary>
internal sealed class NotTextException(string found) : Exception(found);
