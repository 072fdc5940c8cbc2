namespace Ledger.Storage.Tests;

/// <summary>A reading is one state of the file, whatever others write meanwhile.</summary>
public sealed class SnapshotTests : IDisposable
{
    private readonly TemporaryLedger _file = new();
    private readonly LedgerFile _writer;

    public SnapshotTests()
    {
        Some.Stock(_file);
        _writer = LedgerFile.Open(_file.FilePath, _file.Clock);
    }

    public void Dispose()
    {
        _writer.Dispose();
        _file.Dispose();
    }

    [Fact]
    public void What_is_written_between_two_questions_of_a_reading_is_not_seen_by_it()
    {
        _file.Ledger.Read(() =>
        {
            var before = Seen();
            Assert.IsType<Posted>(_writer.Post(Some.Session()));
            Assert.Equal(before, Seen());
            Assert.Empty(_file.Ledger.Rows("session"));
            return true;
        });
        Assert.Single(_file.Ledger.Sessions(_file.Ledger.Today, null, 10));
        Assert.Equal(46, OnHand());
    }

    /// <summary>
    /// Nothing is asked before the other writes, so the reading begins with what it wrote: it is the first look that
    /// holds.
    /// </summary>
    [Fact]
    public void A_reading_holds_from_its_first_question_on() => _file.Ledger.Read(() =>
    {
        _writer.Post(Some.Session());
        Assert.Equal(46, OnHand());
        _writer.Post(Some.Session("S02"));
        Assert.Single(_file.Ledger.Sessions(_file.Ledger.Today, null, 10));
        return true;
    });

    [Fact]
    public void A_posting_inside_a_reading_is_written_and_seen_by_what_is_asked_after_it() => _file.Ledger.Read(() =>
    {
        var lent = Holdings();
        _file.Accept(Some.Session());
        Assert.Equal(50, lent.OnHand(Some.Film()).Base);
        Assert.Equal(46, OnHand());
        _writer.Post(Some.Session("S02"));
        Assert.Equal(46, OnHand());
        _file.Accept(Some.Session("S03"));
        Assert.Equal(38, OnHand());
        Assert.IsType<Accepted>(_file.Ledger.Preview(Some.Session("S04", 38)));
        Assert.IsType<Refused>(_file.Ledger.Preview(Some.Session("S04", 39)));
        return true;
    });

    [Fact]
    public void Holdings_are_read_once_while_nothing_is_written_and_shared_by_all_who_ask()
    {
        _file.Ledger.Read(() =>
        {
            Assert.Same(Holdings(), Holdings());
            Assert.NotSame(Holdings(), _file.Ledger.HoldingsOn(Some.Day(1, 1)));
            return true;
        });
        var before = Holdings();
        Assert.Same(before, Holdings());
        _writer.Post(Some.Session());
        Assert.NotSame(before, Holdings());
        var after = Holdings();
        _file.Accept(Some.Session("S02"));
        Assert.NotSame(after, Holdings());
        Assert.Equal(after.OnHand(after.Item("pan")!).Base - 4, Holdings().OnHand(after.Item("pan")!).Base);
    }

    [Fact]
    public void A_reading_inside_a_reading_is_the_same() => _file.Ledger.Read(() =>
    {
        var before = _file.Ledger.Read(Seen);
        _writer.Post(Some.Session());
        return Assert.IsType<bool>(before == _file.Ledger.Read(Seen)) && before == Seen();
    });

    [Fact]
    public void A_reading_that_fails_lets_the_file_go()
    {
        Assert.Throws<LedgerFileException>(
            () => _file.Ledger.Read<int>(() => throw new InvalidOperationException($"{Seen()}")));
        _writer.Post(Some.Session());
        Assert.Equal(46, OnHand());
        _file.Accept(Some.Session("S02"));
    }

    /// <summary>Costs, a check and an export beside a writer that never rests.</summary>
    [Fact]
    public async Task No_reading_is_torn_by_a_writer_beside_it()
    {
        using var rest = new CancellationTokenSource();
        var writing = Task.Run(
            () =>
            {
                var written = 0;
                for (; !rest.IsCancellationRequested; written++)
                {
                    _writer.Post(Some.Delivery("pan", 1, 162.5m, month: 3));
                    _writer.Post(Some.Session($"W{written}", 4, bath: written % 2 == 0 ? "F1" : null));
                }

                return written;
            },
            CancellationToken.None);
        for (var i = 0; i < 60; i++)
        {
            var costs = new CostReading(_file.Ledger.Costs(Some.Day(1, 1), Some.Day(12, 31)));
            Assert.True(costs.Reconciles);
            if (i % 4 == 0)
                Assert.Empty(_file.Ledger.Check(null, default).Problems);
            _file.Ledger.Read(() =>
            {
                var entries = Rows("entry");
                Assert.Equal(Rows("session"),
                    _file.Ledger.Rows("session_sheets").Select(row => row[0]).Distinct().Count());
                Assert.Equal(entries, Rows("entry"));
                Assert.Equal(entries, _file.Ledger.Journal(_file.Ledger.Today, null, int.MaxValue).Count);
                return true;
            });
        }

        await rest.CancelAsync();
        Assert.True(await writing > 5);
    }

    private int Rows(string table) => _file.Ledger.Rows(table).Count();

    private Holdings Holdings() => _file.Ledger.HoldingsOn(_file.Ledger.Today);

    private long OnHand() => Holdings().OnHand(Some.Film()).Base;

    /// <summary>Answers of several readers, in one.</summary>
    private string Seen() => string.Join(
        ' ', _file.Ledger.Version, OnHand(), _file.Ledger.Sessions(_file.Ledger.Today, null, 10).Count,
        _file.Ledger.Journal(_file.Ledger.Today, null, 100).Count,
        new CostReading(_file.Ledger.Costs(Some.Day(1, 1), Some.Day(12, 31))).Film,
        _file.Ledger.PlacesOf("pan", _file.Ledger.Today).Count);
}

/// <summary>What an import costs grows as its length does.</summary>
public sealed class ImportWorkTests
{
    [Fact]
    public void Items_are_imported_in_work_that_follows_their_number()
    {
        Allocated(50);
        var (few, many) = (Allocated(400), Allocated(3200));
        Assert.InRange(many, few, few * 8 * 1.5);
    }

    /// <summary>What an import allocates; counted, since time depends on what else the machine does.</summary>
    private static long Allocated(int items)
    {
        using var file = new TemporaryLedger();
        var entries = Enumerable.Range(0, items)
            .Select(i => (Entry)Some.Define(Some.Gloves() with { Code = $"gloves-{i}" })).ToList();
        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(items, file.Ledger.Import(entries, dryRun: false, null, default).Posted);
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
