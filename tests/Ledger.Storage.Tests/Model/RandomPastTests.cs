using CsCheck;
using Ledger.Storage.Deriving;
using Ledger.Storage.Reading;

namespace Ledger.Storage.Tests.Model;

/// <summary>
/// Random lives whose past is changed: what was put right, taken back, said again, said late, told to another ledger or
/// joined is as if it had been said so from the first.
/// </summary>
public sealed class RandomPastTests
{
    private const int FirstUndo = 8;

    private static readonly Entry[] Beginning =
    [
        .. new[] { Some.Film(), Some.Syrup(), Some.Fixer(), Some.Gloves() }.Select(Some.Define), Some.Process(),
    ];

    private static int Times { get; } = Math.Max(2, ModelTests.Lives / 20);

    [Fact]
    public void What_is_taken_back_and_said_again_is_as_before_and_what_is_refused_changes_no_byte() =>
        ModelTests.Steps.Sample(steps =>
        {
            using var file = Lived(steps, out _);
            var last = file.Ledger.Journal(file.Ledger.Today, null, 1)[0].Number;
            var before = LedgerState.Of(file.Ledger);
            for (var number = 1L; number <= last; number += 3)
            {
                var bytes = File.ReadAllBytes(file.FilePath);
                if (file.Ledger.Post(Undo(number)) is not Posted undo)
                {
                    Assert.Equal(bytes, File.ReadAllBytes(file.FilePath));
                    continue;
                }

                file.Accept(Undo(undo.Number));
                Assert.Equal(before, LedgerState.Of(file.Ledger));
            }

            Assert.Empty(file.Ledger.Check(null, default).Problems);
        }, iter: Times, threads: 1);

    [Fact]
    public void What_is_taken_back_was_never_said() => ModelTests.Steps.Sample(steps =>
    {
        using var life = Lived(Straight(steps), out var said);
        foreach (var entry in said.Where((_, i) => i % 4 == 0).Where(GivesNoName))
        {
            using var taken = Again(said)!;
            if (taken.Ledger.Post(Undo(NumberOf(taken, entry))) is not Posted)
                continue;
            using var never = Again(said.Where(one => one != entry));
            Assert.NotNull(never);
            Assert.Equal(LedgerState.WithoutHeads(never.Ledger), LedgerState.WithoutHeads(taken.Ledger));
        }
    }, iter: Times, threads: 1);

    [Fact]
    public void What_is_put_right_was_never_said_wrongly() => ModelTests.Steps.Sample(steps =>
    {
        using var life = Lived(Straight(steps), out var said);
        using var right = Again(said)!;
        var whole = LedgerState.Of(right.Ledger);
        foreach (var entry in said.Where((_, i) => i % 4 == 0))
        {
            if (Mistyped(entry) is not var (wrong, change))
                continue;
            using var erred = Again(said.Select(one => one == entry ? wrong : one));
            if (erred is null)
                continue;
            Assert.NotEqual(whole, LedgerState.Of(erred.Ledger));
            erred.Accept(new Amendment
            {
                Key = Some.Key(), Date = Some.Day(6, 9), Reference = entry.Key, Changes = [change], Reason = "mistyped",
            });
            Assert.Equal(whole, LedgerState.Of(erred.Ledger));
        }
    }, iter: Times, threads: 1);

    [Fact]
    public void What_is_said_late_is_as_if_said_in_time() => ModelTests.Steps.Sample(steps =>
    {
        using var life = Lived(Straight(steps), out var said);
        using var inTime = Again(said)!;
        var whole = LedgerState.Of(inTime.Ledger);
        for (var i = 0; i < said.Count; i += 4)
        {
            using var late = GivesNoName(said[i]) ? Again(said.Where((_, other) => other != i)) : null;
            if (late is null)
                continue;
            var next = said.Skip(i + 1).FirstOrDefault(one => one.Date == said[i].Date)?.Key;
            late.Accept(said[i] with { Before = next ?? "" });
            Assert.Equal(whole, LedgerState.Of(late.Ledger));
            Assert.Empty(late.Ledger.Check(null, default).Problems);
        }
    }, iter: Times, threads: 1);

    [Fact]
    public void Derived_from_any_entry_on_a_ledger_is_the_same() => ModelTests.Steps.Sample(steps =>
    {
        using var file = Lived(steps, out _);
        var (whole, connection) = (LedgerState.Of(file.Ledger), file.Ledger.Connection);
        foreach (var from in new SaidLog(connection).All().Where((_, i) => i % 3 == 0).ToList())
        {
            connection.Run("BEGIN");
            using (var inside = new Snapshot(connection))
                new Derivation(connection, inside, file.Ledger.Today).From(new(from.Date, from.Ord), [], [], [],
                    before: null);
            Assert.Equal(whole, LedgerState.Of(file.Ledger));
            connection.Run("ROLLBACK");
        }
    }, iter: Times, threads: 1);

    [Fact]
    public void What_was_said_makes_the_same_ledger_once_more() => ModelTests.Steps.Sample(steps =>
    {
        using var file = Lived(steps, out _);
        using var again = new TemporaryLedger();
        Assert.Null(again.Ledger.Join(file.Ledger.SaidLines(), dryRun: false).Refusal);
        Assert.Equal(file.Ledger.SaidLines(), again.Ledger.SaidLines());
        Assert.Equal(LedgerState.Of(file.Ledger), LedgerState.Of(again.Ledger));
        Assert.Empty(again.Ledger.Check(null, default).Problems);
    }, iter: Times, threads: 1);

    [Fact]
    public void Two_copies_are_joined_alike_both_ways_or_neither_way() => Gen.Select(
        ModelTests.Steps, ModelTests.Steps, ModelTests.Steps).Sample((steps, ones, others) =>
    {
        using var one = Lived(steps, out _);
        using var other = new TemporaryLedger();
        other.Replace(path => File.Copy(one.FilePath, path, overwrite: true));
        Live(one, ones, 100);
        Live(other, others, 200);
        var (mine, theirs) = (one.Ledger.SaidLines(), other.Ledger.SaidLines());
        var (state, otherState) = (LedgerState.Of(one.Ledger), LedgerState.Of(other.Ledger));
        var (there, back) = (one.Ledger.Join(theirs, dryRun: false), other.Ledger.Join(mine, dryRun: false));
        Assert.Equal(there.Refusal, back.Refusal);
        if (there.Refusal is not null)
        {
            Assert.Equal(mine, one.Ledger.SaidLines());
            Assert.Equal(theirs, other.Ledger.SaidLines());
            Assert.Equal(state, LedgerState.Of(one.Ledger));
            Assert.Equal(otherState, LedgerState.Of(other.Ledger));
            return;
        }

        Assert.Equal(one.Ledger.SaidLines(), other.Ledger.SaidLines());
        Assert.Equal(LedgerState.Of(one.Ledger), LedgerState.Of(other.Ledger));
        Assert.Equal(0, one.Ledger.Join(theirs, dryRun: false).Added);
        Assert.Empty(one.Ledger.Check(null, default).Problems);
    }, iter: Times, threads: 1);

    /// <summary>A ledger of that life, and what was accepted of it.</summary>
    private static TemporaryLedger Lived(
        (int Kind, int Which, int Amount, int Day)[] steps, out IReadOnlyList<Entry> accepted)
    {
        var file = Again([])!;
        accepted = Live(file, steps, 0);
        return file;
    }

    private static List<Entry> Live(
        TemporaryLedger file, (int Kind, int Which, int Amount, int Day)[] steps, int first)
    {
        var (accepted, naive, lives) = (new List<Entry>(), new NaiveLedger(), new List<int>());
        for (var i = 0; i < steps.Length; i++)
        {
            var (entry, _) = ModelTests.Next(steps[i], first + i, naive, lives);
            if (file.Ledger.Post(entry) is Posted)
                accepted.Add(entry);
        }

        return accepted;
    }

    /// <summary>
    /// The same entries in a ledger of their own, imported: names go by the days, not by when something was said. Null
    /// where one is refused.
    /// </summary>
    private static TemporaryLedger? Again(IEnumerable<Entry> entries)
    {
        var file = new TemporaryLedger();
        if (file.Ledger.Import([.. Beginning, .. entries], dryRun: false, null, default).Refused.Count == 0)
            return file;
        file.Dispose();
        return null;
    }

    /// <summary>Without what takes back or amends.</summary>
    private static (int Kind, int Which, int Amount, int Day)[] Straight(
        (int Kind, int Which, int Amount, int Day)[] steps) =>
        [.. steps.Select(step => step with { Kind = step.Kind % FirstUndo })];

    /// <summary>What gives a name keeps it for ever, so that what is said again later has another.</summary>
    private static bool GivesNoName(Entry entry) => entry is Opening or Discard or StockCount;

    /// <summary>The entry with a wrong figure, and what puts it right.</summary>
    private static (Entry Wrong, FieldChange Change)? Mistyped(Entry entry) => entry switch
    {
        Delivery { Lines: [var line] } delivery => (
            delivery with { Lines = [line with { Price = line.Price + Money.Of(7) }] },
            new(1, "price", $"{line.Price!.Value.Amount}")),
        StockCount count => (
            count with { Found = count.Found with { Base = count.Found.Base + count.Found.Unit.BasePerUnit() } },
            new(0, "found", $"{count.Found}")),
        Discard { Quantity: { } quantity } discard => (
            discard with { Quantity = quantity with { Base = quantity.Base + quantity.Unit.BasePerUnit() } },
            new(0, "quantity", $"{quantity}")),
        _ => null,
    };

    private static long NumberOf(TemporaryLedger file, Entry entry) =>
        file.Ledger.Connection.Number($"SELECT id FROM entry WHERE key = '{entry.Key}'");

    private static Undo Undo(long number) =>
        new() { Key = Some.Key(), Date = Some.Day(6, 9), Number = number, Reason = "mistake" };
}
