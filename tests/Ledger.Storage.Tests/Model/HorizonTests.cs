using System.IO.Compression;
using System.Runtime.CompilerServices;
using Ledger.Storage.Deriving;
using Ledger.Storage.Upkeep;

namespace Ledger.Storage.Tests.Model;

/// <summary>
/// What version 0.2.0 posted travels as one block: into an empty ledger, and between copies of one ledger.
/// </summary>
public sealed class HorizonTests
{
    [Fact]
    public void A_ledger_of_an_earlier_version_is_written_and_read_whole()
    {
        using var file = Old();
        InAndOut(file);
        file.Accept(Counted("one", 40));
        file.Accept(new Undo { Key = "undo", Date = file.Ledger.Today, Number = LastOf(file, "session"),
            Reason = "mistake" });
        file.Accept(Some.Define(Some.Film("other")));
        InAndOut(file);
    }

    [Fact]
    public void Two_copies_of_an_older_ledger_are_joined_and_it_does_not_matter_which_way()
    {
        using var one = Old();
        using var other = Old();
        one.Accept(Counted("one", 40));
        one.Sleep();
        other.Accept(new Undo { Key = "undo", Date = other.Ledger.Today, Number = LastOf(other, "session"),
            Reason = "mistake" });
        other.Accept(Some.Define(Some.Film("other")));
        var (first, second) = (one.Ledger.SaidLines(), other.Ledger.SaidLines());
        Assert.Equal(new JoinOutcome(2, first.Count - 2, null),
            one.Ledger.Join(second, dryRun: false) with { Known = first.Count - 2 });
        Assert.Null(other.Ledger.Join(first, dryRun: false).Refusal);
        Assert.Equal(one.Ledger.SaidLines(), other.Ledger.SaidLines());
        Assert.Equal(Rows(one), Rows(other));
        Assert.Empty(one.Ledger.Check(null, default).Problems);
        Assert.Empty(other.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void Ledgers_that_hold_different_entries_of_an_earlier_version_are_not_joined()
    {
        using var old = Old();
        using var fresh = new TemporaryLedger();
        Some.Stock(fresh);
        var refusal = fresh.Ledger.Join(old.Ledger.SaidLines(), dryRun: false).Refusal;
        Assert.StartsWith("the two hold different entries of version 0.2.0 or earlier", refusal,
            StringComparison.Ordinal);
        Assert.Equal(refusal, old.Ledger.Join(fresh.Ledger.SaidLines(), dryRun: false).Refusal);
        using var altered = Old();
        altered.Run("UPDATE movement SET value = value + 1 WHERE id = 20");
        Assert.Equal(refusal, altered.Ledger.Join(old.Ledger.SaidLines(), dryRun: false).Refusal);
    }

    [Fact]
    public void A_block_that_was_altered_on_its_way_is_refused()
    {
        using var old = Old();
        using var empty = new TemporaryLedger();
        var lines = old.Ledger.SaidLines().ToList();
        lines[0] = lines[0].Replace("session S04", "session S05", StringComparison.Ordinal);
        Assert.Throws<LedgerFileException>(() => empty.Ledger.Join(lines, dryRun: false));
        Assert.Empty(empty.Ledger.Journal(empty.Ledger.Today, null, 1));
    }

    private static void InAndOut(TemporaryLedger file)
    {
        using var again = new TemporaryLedger();
        Assert.Null(again.Ledger.Join(file.Ledger.SaidLines(), dryRun: false).Refusal);
        Assert.Equal(Rows(file), Rows(again));
        Assert.Equal(file.Ledger.SaidLines(), again.Ledger.SaidLines());
        Assert.Empty(again.Ledger.Check(null, default).Problems);
    }

    private static long LastOf(TemporaryLedger file, string kind) =>
        file.Ledger.Journal(file.Ledger.Today, null,
            500).First(entry => entry.Kind == kind && entry.UndoneBy is null).Number;

    private static StockCount Counted(string key, int pieces) => new()
    {
        Key = key, Date = new(2026, 3, 15), What = "gloves", Found = new Quantity(pieces, Unit.Piece),
        Reason = "counted", Anyway = true,
    };

    private static List<string> Rows(TemporaryLedger file) =>
        [.. new Comparison(file.Ledger.Connection).Dump(file.Ledger.Connection)];

    /// <summary>The demo year as version 0.2.0 wrote it, brought up to date.</summary>
    private static TemporaryLedger Old([CallerFilePath] string here = "")
    {
        var file = new TemporaryLedger();
        var packed = Path.Combine(Path.GetDirectoryName(here)!, "..", "Fixtures", "0.2.0-demo.db.gz");
        file.Replace(path =>
        {
            using var unpacked = new GZipStream(File.OpenRead(packed), CompressionMode.Decompress);
            using var target = File.Create(path);
            unpacked.CopyTo(target);
        });
        return file;
    }
}
