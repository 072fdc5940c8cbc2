namespace Ledger.App.Tests.Native;

/// <summary>The screens while nothing happens.</summary>
public sealed partial class NativeTests
{
    /// <summary>
    /// The processor's time is counted in hundredths of a second (proc_pid_stat(5), fields 14 and 15).
    /// </summary>
    private const int UserTime = 11, SystemTime = 12;

    [Fact]
    public void While_nothing_happens_not_a_byte_is_sent_and_no_time_is_spent_and_another_process_is_still_seen()
    {
        NeedTmux();
        if (!OperatingSystem.IsLinux())
            Assert.Skip("what a process spends is asked of Linux");
        var (ledger, pidFile) = (Demo(), Path.Combine(binary.Folder, $"{Guid.NewGuid():N}.pid"));
        using var terminal = new Tmux($"sh -c \"echo \\$\\$ >{pidFile}; exec {binary.Binary} --file {ledger}\"");
        terminal.Await("2 Shelf");
        terminal.Press("6");
        terminal.Await("planned trip");
        Thread.Sleep(2000);

        var sent = Path.Combine(binary.Folder, $"{Guid.NewGuid():N}.sent");
        terminal.Listen(sent);
        var before = Spent(pidFile);
        Thread.Sleep(4000);
        Assert.Equal(0, File.Exists(sent) ? new FileInfo(sent).Length : 0);
        Assert.InRange(Spent(pidFile) - before, 0, 4);

        Do("--file", ledger, "record", "discard", "practice", "1", "--reason", "bent");
        terminal.Await("1 sheet of practice");
        Assert.NotEqual(0, new FileInfo(sent).Length);
        terminal.Press("C-q");
        terminal.Await("ended with 0");
    }

    private static int Spent(string pidFile)
    {
        var fields = File.ReadAllText($"/proc/{File.ReadAllText(pidFile).Trim()}/stat").Split(')')[^1].Split(' ',
            StringSplitOptions.RemoveEmptyEntries);
        return int.Parse(fields[UserTime], CultureInfo.InvariantCulture)
            + int.Parse(fields[SystemTime], CultureInfo.InvariantCulture);
    }
}
