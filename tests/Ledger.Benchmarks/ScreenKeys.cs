namespace Ledger.Benchmarks;

/// <summary>
/// From a key to the drawn screen, of the native binary in a terminal of 120 by 40: python3 is the terminal.
/// </summary>
internal static class ScreenKeys
{
    /// <summary>Starts the program as the child of a terminal; what is sent to it is read with the time it took.</summary>
    private const string Start = """
        import fcntl, os, pty, select, statistics, struct, sys, termios, time
        binary, ledger = sys.argv[1:3]
        child, screen = pty.fork()
        if child == 0:
            os.environ["TERM"] = "xterm-256color"
            os.execv(binary, [binary, "--file", ledger])
        fcntl.ioctl(screen, termios.TIOCSWINSZ, struct.pack("HHHH", 40, 120, 0, 0))

        def read(seconds, until=None):
            out, end = b"", time.monotonic() + seconds
            while time.monotonic() < end and (until is None or until not in out):
                if select.select([screen], [], [], 0.05)[0]:
                    try:
                        out += os.read(screen, 65536)
                    except OSError:
                        return out
            return out

        def press(key):
            start = time.perf_counter()
            os.write(screen, key)
            out = read(5, b"\x1b[?2026l")
            took = time.perf_counter() - start
            out += read(0.05)
            return took * 1000, len(out)

        def end():
            os.write(screen, b"\x11\x11")
            read(0.5)
            os.close(screen)
            os.waitpid(child, 0)

        read(30, b"Today")
        read(2)

        """;

    private const string Terminal = Start + """
        def median(keys):
            pressed = [press(key) for key in keys]
            return statistics.median(took for took, _ in pressed), statistics.median(sent for _, sent in pressed)

        idle = len(read(3))
        down, up = b"\x1b[B", b"\x1b[A"
        press(b"2")
        shelf = median([down, up] * 15)
        press(b"6")
        journal = median([down] * 20 + [up] * 10)
        change = median([b"2", b"6"] * 10)
        press(b"2"), press(b"c")
        typed = median([b"1", b"2", b"3"] * 5)
        end()
        print(idle, *shelf, *journal, *change, *typed)
        """;

    /// <summary>
    /// The first screen; then the shelf to its end and something found there, something found in the list of actions,
    /// the holders and what is to be ordered, to their ends.
    /// </summary>
    private const string Memory = Start + """
        def most():
            return next(line.split()[1] for line in open(f"/proc/{child}/status") if line.startswith("VmHWM"))

        first = most()
        last, find, leave, actions = b"\x1b[F", b"/", b"\x1b", b"\x1bOQ"
        for key in [b"2", last, find, b"9", b"9", leave, actions, b"s", b"u", leave, b"7", last, b"8", last]:
            press(key)
            read(0.5)
        print(first, most())
        end()
        """;

    /// <summary>
    /// The most memory that the program held until its first screen stood there, with its details, and until its lists
    /// had been gone through.
    /// </summary>
    public static (double AtFirst, double InUse) Megabytes(string binary, string ledger) =>
        Shell.Run("python3", ["-c", Memory, binary, ledger]).Split() is [var first, var inUse, ..]
            ? (Of(first), Of(inUse))
            : throw new InvalidOperationException("the program did not start in a terminal");

    private static double Of(string kilobytes) => double.Parse(kilobytes, CultureInfo.InvariantCulture) / 1024;

    private static readonly string[] Keys =
        ["arrow on the shelf", "arrow in the journal", "change between shelf and journal", "letter typed in a form"];

    /// <summary>
    /// A ledger of 100,000 movements against the demo year: the length of the history must not matter.
    /// </summary>
    public static IEnumerable<string> Ratios(string binary)
    {
        if (!File.Exists(binary))
        {
            yield return $"| the native binary | not published at {Path.GetFileName(binary)} | |";
            yield break;
        }

        var demo = BigLedger.NewPath();
        Shell.Run(binary, ["demo", "--into", demo, "--no-ui"]);
        using var large = BigLedger.WithMovements(100_000);
        var (many, few) = (Measured(binary, large.Path), Measured(binary, demo));
        for (var key = 0; key < Keys.Length; key++)
        {
            var (slow, quick, sent) = (many[1 + 2 * key], few[1 + 2 * key], few[2 + 2 * key]);
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"| key to drawn screen, {Keys[key]}, 100,000 movements : demo year | {slow / quick:0.00} ({slow:0.0} ms : {quick:0.0} ms), {sent:0} bytes | 1.5 |");
        }

        yield return string.Create(CultureInfo.InvariantCulture,
            $"| bytes sent in 3 s while nothing happens | {few[0]:0} | 0 |");
        File.Delete(demo);
        File.Delete(large.Path);
    }

    private static double[] Measured(string binary, string ledger) =>
        [.. Shell.Run("python3", ["-c", Terminal, binary, ledger]).Split().Where(part => part.Length > 0)
            .Select(part => double.Parse(part, CultureInfo.InvariantCulture))];
}
