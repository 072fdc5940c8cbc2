namespace Ledger.App.Tests.Native;

/// <summary>
/// What the terminal and the streams see of the binary: signals, closed and full outputs, codes that steer.
/// </summary>
public sealed partial class NativeTests
{
    private const string Modes = "#{alternate_on}#{mouse_any_flag}#{cursor_flag}#{keypad_cursor_flag}";
    private const string Given = "0010";

    [Theory]
    [InlineData("TERM", 143)]
    [InlineData("HUP", 129)]
    [InlineData("INT", 130)]
    public void A_signal_that_ends_the_screens_gives_the_terminal_back(string signal, int status)
    {
        NeedTmux();
        using var terminal = new Tmux($"{Started(out var pid)}; echo was $?; stty -a | tr ' ' '\\n' | grep icanon");
        terminal.Await("2 Shelf");
        Signal(signal, pid);
        terminal.Await($"was {status}");
        terminal.Await("icanon");
        Assert.DoesNotContain("-icanon", terminal.Screen, StringComparison.Ordinal);
        Assert.Equal(Given, terminal.Known(Modes));
    }

    [Fact]
    public void A_stopped_program_gives_the_terminal_back_and_takes_it_again_when_it_is_continued()
    {
        NeedTmux();
        using var terminal = new Tmux("bash --norc -i");
        terminal.Press(Started(out var pid));
        terminal.Press("Enter");
        terminal.Await("2 Shelf");
        Signal("TSTP", pid);
        terminal.Await("Stopped");
        Assert.Equal(Given, terminal.Known(Modes));
        terminal.Press("stty -a | tr ' ' '\\n' | grep icanon");
        terminal.Press("Enter");
        terminal.Await("\nicanon");
        terminal.Press("fg; echo was $?"); // typed while the program ends, the program would read it
        terminal.Press("Enter");
        terminal.Await("2 Shelf");
        Assert.StartsWith("11", terminal.Known(Modes), StringComparison.Ordinal);
        terminal.Press("2");
        terminal.Await("Corvane");
        terminal.Press("C-q");
        terminal.Await("was 0");
        Assert.Equal(Given, terminal.Known(Modes));
    }

    [Theory]
    [InlineData(">/dev/full", "the disk is full")]
    [InlineData(">&-", "it is closed")]
    public void An_output_that_cannot_be_written_does_not_hide_that_the_entry_is_recorded(string redirected, string why)
    {
        var ledger = Demo();
        var ran = PublishedBinary.Run("sh",
            ["-c", $"'{binary.Binary}' --file '{ledger}' record count fen80 61 --reason counted {redirected}"]);
        Assert.Equal(4, ran.Status);
        Assert.Matches($"^the output cannot be written: {why}; entry [0-9]+ is recorded\n$", ran.Errors);
        Assert.Contains("61 sheets", Do("--file", ledger, "show", "journal", "--last", "1"), StringComparison.Ordinal);
        Do("--file", ledger, "check");
    }

    [Fact]
    // What is written is more than a pipe holds (64 KiB on Linux) and its reader takes at once.
    public void Whoever_stops_reading_ends_a_reading_without_a_word()
    {
        var ran = PublishedBinary.Run(
            "bash",
            ["-c", $"'{binary.Binary}' --file '{Demo()}' show costs --json | head -c 1; echo ${{PIPESTATUS[0]}}"]);
        Assert.Equal("{141\n", ran.Output);
        Assert.Equal("", ran.Errors);
    }

    [Theory]
    [InlineData("--version")]
    [InlineData("--help")]
    [InlineData("show today --json")]
    [InlineData("show journal")]
    [InlineData("record count fen80 61 --reason counted")]
    [InlineData("check")]
    [InlineData("manual")]
    [InlineData("record silver-test F4")]
    public void No_command_sends_a_code_to_the_terminal(string line)
    {
        if (!OperatingSystem.IsLinux())
            Assert.Skip("the script program of other systems takes other arguments");
        var seen = PublishedBinary.Run("script",
            ["-qec", $"{binary.Binary} --file {Demo()} {line}", "/dev/null"]).Output;
        Assert.NotEmpty(seen);
        Assert.DoesNotContain('\u001B', seen);
    }

    private static void NeedTmux()
    {
        if (!PublishedBinary.HasTmux)
            Assert.Skip("there is no tmux here");
    }

    /// <summary>A command line that writes its process number into a file and becomes the program.</summary>
    private string Started(out string pid)
    {
        pid = Path.Combine(binary.Folder, $"{Guid.NewGuid():N}.pid");
        return $"sh -c \"echo \\$\\$ >{pid}; exec {binary.Binary} --file {Demo()}\"";
    }

    private static void Signal(string name, string pidFile)
    {
        var pid = int.Parse(File.ReadAllText(pidFile), CultureInfo.InvariantCulture);
        Assert.Equal(0, PublishedBinary.Run("kill", [$"-{name}", pid.ToString(CultureInfo.InvariantCulture)]).Status);
    }
}
