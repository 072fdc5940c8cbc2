using System.Runtime.InteropServices;

namespace Ledger.App.Wiring;

/// <summary>
/// The output or the messages of the process, written by the operating system's own call. The console library would
/// send the terminal codes of its own before the first text, and a file that others write to as well needs the kernel's
/// position, not one of ours.
/// </summary>
/// <param name="descriptor">1 or 2.</param>
/// <param name="name">What a user calls it.</param>
internal sealed partial class StandardStream(int descriptor, string name) : Stream
{
    private const int Interrupted = 4, BadDescriptor = 9, NoSpace = 28, BrokenPipe = 32;
    private static readonly int TryAgain = OperatingSystem.IsLinux() ? 11 : 35;

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    public override long Position { get => throw new NotSupportedException(); set =>
        throw new NotSupportedException(); }

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        while (buffer.Length > 0)
        {
            var written = WriteTo(descriptor, in MemoryMarshal.GetReference(buffer), buffer.Length);
            if (written >= 0)
                buffer = buffer[(int)written..];
            else
                WaitOrThrow(Marshal.GetLastPInvokeError());
        }
    }

    public override void Flush()
    {
    }

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    private void WaitOrThrow(int error)
    {
        if (error == TryAgain)
            Thread.Sleep(1);
        else if (error != Interrupted)
            throw new OutputLostException(
                error switch
                {
                    NoSpace => $"{name} cannot be written: the disk is full",
                    BadDescriptor => $"{name} cannot be written: it is closed",
                    BrokenPipe => $"{name} cannot be written: nobody reads it any more",
                    _ => $"{name} cannot be written (error {error} of the operating system)",
                },
                error == BrokenPipe);
    }

    [LibraryImport("libc", EntryPoint = "write", SetLastError = true)]
    private static partial nint WriteTo(int descriptor, ref readonly byte buffer, nint count);
}
