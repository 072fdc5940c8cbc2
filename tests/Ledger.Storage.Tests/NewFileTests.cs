namespace Ledger.Storage.Tests;

/// <summary>A file appears whole or not at all, and what a killed program left of one goes.</summary>
public sealed class NewFileTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    private string Target => Path.Combine(_file.Folder, "copy.db");

    public void Dispose() => _file.Dispose();

    [Fact]
    public void What_a_killed_program_left_goes_with_the_next_file()
    {
        var left = LeftOver("0123456789abcdef0123456789abcdef");
        File.WriteAllText(left + "-wal", "a log");
        _file.Ledger.BackUp(Target);
        Assert.Empty(Directory.EnumerateFiles(_file.Folder, ".*"));
        Assert.True(File.Exists(Target));
    }

    /// <summary>A disk that could not delete the log let the file itself have its name.</summary>
    [Fact]
    public void A_log_whose_file_is_gone_goes_with_the_next_file()
    {
        var (log, mine) = ($"{LeftOver("0123456789abcdef0123456789abcdef")}-wal", $"{LeftOver("mine")}-wal");
        foreach (var left in new[] { log, mine })
        {
            File.Move(left[..^4], left);
            Assert.True(File.Exists(left));
        }

        _file.Ledger.BackUp(Target);
        Assert.False(File.Exists(log));
        Assert.Equal("something", File.ReadAllText(mine));
    }

    [Fact]
    public void What_another_program_is_writing_stays()
    {
        var others = LeftOver("0123456789abcdef0123456789abcdef");
        using var writing = new FileStream(others, FileMode.Open, FileAccess.Write, FileShare.ReadWrite);
        _file.Ledger.BackUp(Target);
        Assert.True(File.Exists(others));
    }

    [Theory]
    [InlineData("0123456789abcdef0123456789abcdeg")]
    [InlineData("mine")]
    public void A_file_of_the_users_stays(string name)
    {
        var mine = LeftOver(name);
        _file.Ledger.BackUp(Target);
        Assert.Equal("something", File.ReadAllText(mine));
    }

    [Fact]
    public void Several_unfinished_files_stand_side_by_side()
    {
        using var one = new NewFile(Target, _file.FilePath);
        using var other = new NewFile(Target + "2", _file.FilePath);
        Assert.True(File.Exists(one.Unfinished));
        one.Finish(isReplacing: false);
        other.Finish(isReplacing: false);
        Assert.Equal([Target, Target + "2", _file.FilePath],
            Directory.EnumerateFiles(_file.Folder, "*.db*")
                .Where(file => !file.Contains(".db-", StringComparison.Ordinal)).Order());
        Assert.Empty(Directory.EnumerateFiles(_file.Folder, ".*"));
    }

    private string LeftOver(string name)
    {
        var path = Path.Combine(_file.Folder, $".trayledger-{name}.part");
        File.WriteAllText(path, "something");
        return path;
    }
}
