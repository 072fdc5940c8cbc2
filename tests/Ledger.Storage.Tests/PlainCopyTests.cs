namespace Ledger.Storage.Tests;

/// <summary>
/// The file alone holds everything, whenever it is copied; and where it does not, nothing of it is overlooked.
/// </summary>
public sealed class PlainCopyTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public PlainCopyTests() => Some.Stock(_file);

    public void Dispose() => _file.Dispose();

    [Fact]
    public void A_copy_of_the_file_alone_holds_every_entry_while_the_ledger_is_open()
    {
        using var screen = LedgerFile.Open(_file.FilePath, _file.Clock);
        screen.HoldingsOn(screen.Today);
        for (var i = 1; i <= 5; i++)
        {
            _file.Accept(Some.Session($"S{i:00}"));
            Assert.Equal(i, SessionsIn(Taken($"copy{i}.db", "")));
        }
    }

    [Fact]
    public void Nothing_stays_beside_the_ledger_when_it_is_closed()
    {
        using (LedgerFile.Open(_file.FilePath, _file.Clock))
            _file.Accept(Some.Session());
        _file.Ledger.Dispose();
        Assert.Equal([_file.FilePath], Directory.EnumerateFiles(_file.Folder));
    }

    /// <summary>As a reading leaves it that was killed: an empty log and its index.</summary>
    [Fact]
    public void What_a_killed_reading_left_beside_the_ledger_goes_at_the_next_one()
    {
        _file.Ledger.Dispose();
        File.WriteAllBytes(_file.FilePath + "-wal", []);
        File.WriteAllBytes(_file.FilePath + "-shm", new byte[32 * 1024]);
        using (var reading = LedgerFile.Open(_file.FilePath, _file.Clock))
            Assert.NotEmpty(reading.Journal(reading.Today, null, 10));
        Assert.Equal([_file.FilePath], Directory.EnumerateFiles(_file.Folder));
    }

    [Fact]
    public void Where_a_reading_has_no_room_for_its_index_the_full_disk_is_named() => Assert.Contains(
        "the disk of a.db is full", Trouble.With("a.db", new("disk I/O error", 10, 10 | (19 << 8))).Message,
        StringComparison.Ordinal);

    [Fact]
    public void What_a_killed_reading_left_where_temporary_files_are_goes_at_the_next_one()
    {
        var left = Path.Combine(Path.GetTempPath(), $".trayledger-{Guid.NewGuid():N}.part");
        File.WriteAllText(left, "a copy that was not finished");
        File.WriteAllText(left + "-wal", "its log");
        var memory = new SqliteConnection("Data Source=:memory:");
        memory.Open();
        using (memory)
            DetachedCopy.Read(_file.FilePath, memory);
        Assert.False(File.Exists(left) || File.Exists(left + "-wal"));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_log_beside_a_ledger_that_may_only_be_read_counts(bool isWithShared)
    {
        string copy;
        using (var reader = new SqliteConnection($"Data Source={_file.FilePath};Pooling=False"))
        {
            reader.Open();
            using var command = reader.CreateCommand();
            command.CommandText = "BEGIN; SELECT count(*) FROM session";
            command.ExecuteScalar();
            _file.Accept(Some.Session());
            copy = Taken("alone/ledger.db", "", "-wal", isWithShared ? "-shm" : "-wal");
        }

        var folder = Path.GetDirectoryName(copy)!;
        foreach (var file in Directory.EnumerateFiles(folder))
            File.SetAttributes(file, FileAttributes.ReadOnly);
        var before = Directory.EnumerateFiles(folder).Order(StringComparer.Ordinal).ToDictionary(file => file,
            File.ReadAllBytes);
        Assert.Equal(1, SessionsIn(copy));
        using (var ledger = LedgerFile.Open(copy, _file.Clock))
            Assert.Contains("cannot be written",
                Assert.Throws<LedgerFileException>(() => ledger.Post(Some.Session("S02"))).Message,
                StringComparison.Ordinal);
        Assert.Equal(before, Directory.EnumerateFiles(folder).Order(StringComparer.Ordinal).ToDictionary(file => file,
            File.ReadAllBytes));
    }

    [Fact]
    public void A_backup_that_is_used_as_a_ledger_gets_its_log_with_the_first_entry()
    {
        var copy = Path.Combine(_file.Folder, "copy.db");
        _file.Ledger.BackUp(copy);
        Assert.Equal(1,
            File.ReadAllBytes(copy)[18]); // SQLite's file format: 1 without a log that is written ahead, 2 with one
        var before = File.ReadAllBytes(copy);
        Assert.Equal(0, SessionsIn(copy));
        Assert.Equal(before, File.ReadAllBytes(copy));
        using (var ledger = LedgerFile.Open(copy, _file.Clock))
            ledger.Post(Some.Session());
        Assert.Equal(2, File.ReadAllBytes(copy)[18]);
    }

    private string Taken(string name, params string[] endings)
    {
        var copy = Path.Combine(_file.Folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
        foreach (var ending in endings)
            File.Copy(_file.FilePath + ending, copy + ending, overwrite: true);
        return copy;
    }

    private int SessionsIn(string path)
    {
        using var ledger = LedgerFile.Open(path, _file.Clock);
        return ledger.Sessions(ledger.Today, null, 100).Count;
    }
}
