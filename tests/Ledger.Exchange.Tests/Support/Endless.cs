namespace Ledger.Exchange.Tests.Support;

/// <summary>A stream that begins with some bytes and then repeats one, without holding them.</summary>
internal sealed class Endless(byte[] start, byte filling, long length) : Stream
{
    private long _position;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => length;

    public override long Position { get => _position; set => throw new NotSupportedException(); }

    public override int Read(byte[] buffer, int offset, int count)
    {
        var given = (int)Math.Min(count, length - _position);
        for (var i = 0; i < given; i++, _position++)
            buffer[offset + i] = _position < start.Length ? start[_position] : filling;
        return given;
    }

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
