namespace Ledger.Storage.Tests;

/// <summary>
/// A backup is put back: what it holds is proved before anything is touched, and the ledger stays under its name. In
/// these tests the backup holds the stock, and the ledger a session more.
/// </summary>
public sealed class RestoreTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public RestoreTests()
    {
        Some.Stock(_file);
        _file.Ledger.BackUp(Copy);
        _file.Accept(Some.Session());
    }

    private string Copy => Path.Combine(_file.Folder, "backup.db");

    public void Dispose() => _file.Dispose();

    [Fact]
    public void Whoever_has_the_ledger_open_stays_with_it()
    {
        var old = Restore();
        Assert.Equal(0, Sessions(_file.Ledger));
        _file.Accept(Some.Session("S02"));
        _file.Reopen();
        Assert.Equal(["S02"], _file.Ledger.Sessions(_file.Ledger.Today, null, 10).Select(session => session.Session));
        using var before = LedgerFile.Open(old, _file.Clock);
        Assert.Equal(["S01"], before.Sessions(before.Today, null, 10).Select(session => session.Session));
    }

    [Fact]
    public void A_ledger_that_another_program_writes_to_is_left_alone_in_a_sentence()
    {
        using var other = Open(_file.FilePath);
        other.Run("BEGIN IMMEDIATE");
        Assert.Contains("locked by another program", Assert.Throws<LedgerFileException>(() => Restore()).Message,
            StringComparison.Ordinal);
        other.Run("ROLLBACK");
        Assert.Equal(1, Sessions(_file.Ledger));
        Assert.Empty(Directory.EnumerateFiles(_file.Folder, "*.old"));
    }

    [Fact]
    public void A_reader_in_the_middle_keeps_its_snapshot()
    {
        using var reader = Open(_file.FilePath);
        reader.Run("BEGIN");
        Assert.Equal(1L, reader.Number("SELECT count(*) FROM session"));
        Restore();
        Assert.Equal(1L, reader.Number("SELECT count(*) FROM session"));
        reader.Run("COMMIT");
        Assert.Equal(0L, reader.Number("SELECT count(*) FROM session"));
    }

    [Theory]
    [InlineData("DROP TRIGGER IF EXISTS guard_movement_update; DROP TRIGGER IF EXISTS movement_is_never_changed; "
        + "UPDATE movement SET quantity = quantity + 1 WHERE id = 2")]
    [InlineData("UPDATE balance SET quantity = quantity + 1 WHERE place_id = 100")]
    public void A_backup_whose_figures_do_not_agree_is_refused(string sql)
    {
        using (var connection = Open(Copy))
        {
            connection.CreateFunction("only_trayledger_writes_here", () => 1L, isDeterministic: true);
            connection.Run(sql);
        }

        AssertRefused("is not in order");
    }

    [Fact]
    public void A_backup_with_flipped_bits_is_refused()
    {
        var bytes = File.ReadAllBytes(Copy);
        for (var at = 100; at < bytes.Length; at += 97)
            bytes[at] ^= 0x40;
        File.WriteAllBytes(Copy, bytes);
        AssertRefused("nothing was changed");
    }

    [Fact]
    public void A_backup_that_was_cut_off_is_refused()
    {
        using (var file = File.OpenWrite(Copy))
            file.SetLength(file.Length / 2);
        AssertRefused("nothing was changed");
    }

    [Fact]
    public void An_empty_backup_is_refused()
    {
        File.WriteAllBytes(Copy, []);
        AssertRefused("holds nothing");
    }

    [Fact]
    public void The_ledger_itself_is_no_backup() =>
        Assert.Contains("is the ledger itself", Assert.Throws<LedgerFileException>(() =>
            LedgerFile.Restore(_file.FilePath, _file.FilePath, _file.Clock)).Message, StringComparison.Ordinal);

    [Fact]
    public void Another_programs_file_is_not_overwritten()
    {
        var other = Path.Combine(_file.Folder, "other.db");
        using (var connection = Open(other))
            connection.Run("CREATE TABLE recipe (name TEXT)");
        var before = File.ReadAllBytes(other);
        Assert.Contains("another program",
            Assert.Throws<LedgerFileException>(() => LedgerFile.Restore(Copy, other, _file.Clock)).Message,
            StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(other));
    }

    [Theory]
    [InlineData(0, 64)]
    [InlineData(4096, 40960)]
    [InlineData(18, 2)]
    public void A_damaged_ledger_is_replaced_and_kept_as_it_was(int from, int length)
    {
        _file.Ledger.Dispose();
        using (var stream = File.OpenWrite(_file.FilePath))
        {
            stream.Position = from;
            stream.Write(Enumerable.Repeat((byte)0x5A, length).ToArray());
        }

        var damaged = File.ReadAllBytes(_file.FilePath);
        var old = Restore();
        Assert.Equal(damaged[4096..], File.ReadAllBytes(old)[4096..]);
        _file.Reopen();
        Assert.True(_file.Ledger.Check(null, default).Ok);
        Assert.Equal(0, Sessions(_file.Ledger));
    }

    [Fact]
    public void A_ledger_that_was_cut_off_is_replaced()
    {
        _file.Ledger.Dispose();
        using (var stream = File.OpenWrite(_file.FilePath))
            stream.SetLength(10_000);
        Restore();
        _file.Reopen();
        Assert.True(_file.Ledger.Check(null, default).Ok);
    }

    [Fact]
    public void A_link_is_followed_and_the_file_keeps_its_rights_and_its_log()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("files have other rights there");
            return;
        }

        const UnixFileMode mine = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead;
        _file.Ledger.Dispose();
        File.SetUnixFileMode(_file.FilePath, mine);
        var link = Path.Combine(_file.Folder, "link.db");
        File.CreateSymbolicLink(link, _file.FilePath);
        var old = LedgerFile.Restore(Copy, link, _file.Clock);
        Assert.Equal(_file.FilePath, new FileInfo(link).LinkTarget);
        Assert.Equal((mine, mine), (File.GetUnixFileMode(_file.FilePath), File.GetUnixFileMode(old)));
        using (var connection = Open(_file.FilePath))
        {
            using var command = connection.CreateCommand();
            command.CommandText = "PRAGMA journal_mode";
            Assert.Equal("wal", command.ExecuteScalar());
        }

        _file.Reopen();
        Assert.Equal(0, Sessions(_file.Ledger));
    }

    [Fact]
    public void What_stands_in_a_left_over_log_is_kept_with_the_old_ledger()
    {
        var killed = Path.Combine(_file.Folder, "killed.db");
        using (var reader = Open(_file.FilePath))
        {
            reader.Run("BEGIN");
            reader.Number("SELECT count(*) FROM session");
            _file.Accept(Some.Session("S02"));
            foreach (var ending in new[] { "", "-wal" })
                File.Copy(_file.FilePath + ending, killed + ending);
        }

        Assert.True(new FileInfo(killed + "-wal").Length > 0);
        var old = LedgerFile.Restore(Copy, killed, _file.Clock);
        using var before = LedgerFile.Open(old, _file.Clock);
        Assert.Equal(2, Sessions(before));
        using var now = LedgerFile.Open(killed, _file.Clock);
        Assert.Equal(0, Sessions(now));
    }

    [Fact]
    public void Two_restores_in_one_second_keep_both_old_ledgers()
    {
        Assert.NotEqual(Restore(), Restore());
        Assert.Equal(2, Directory.EnumerateFiles(_file.Folder, "*.old").Count());
    }

    private string Restore() => LedgerFile.Restore(Copy, _file.FilePath, _file.Clock);

    private void AssertRefused(string sentence)
    {
        var before = File.ReadAllBytes(_file.FilePath);
        Assert.Contains(sentence, Assert.Throws<LedgerFileException>(() => Restore()).Message,
            StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(_file.FilePath));
        Assert.Equal(1, Sessions(_file.Ledger));
        Assert.Empty(Directory.EnumerateFiles(_file.Folder, "*.old"));
    }

    private static int Sessions(LedgerFile ledger) => ledger.Sessions(ledger.Today, null, 10).Count;

    private static SqliteConnection Open(string path)
    {
        var connection = new SqliteConnection($"Data Source={path};Pooling=False");
        connection.Open();
        return connection;
    }
}
