using CsCheck;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Storage.Tests.Support;

namespace Ledger.Storage.Tests.Model;

/// <summary>Random entries, valid and invalid, on the real ledger and on a naive one: the same are accepted, and the same is left.</summary>
public sealed class ModelTests
{
    private const long Definitions = 5;

    private static readonly Gen<(int Kind, int Which, int Amount)[]> Steps =
        Gen.Select(Gen.Int[0, 8], Gen.Int[0, 3], Gen.Int[-1, 60]).Array[1, 30];

    [Fact]
    public void TheLedgerAgreesWithANaiveOneAfterEveryEntry() => Steps.Sample(Run, iter: 60, threads: 1);

    private static void Run((int Kind, int Which, int Amount)[] steps)
    {
        using var file = new TemporaryLedger();
        foreach (var item in new[] { Some.Film(), Some.Syrup(), Some.Fixer(), Some.Gloves() })
            file.Accept(Some.Define(item));
        file.Accept(Some.Process());
        var naive = new NaiveLedger();
        for (var i = 0; i < steps.Length; i++)
        {
            var (entry, isAccepted) = Next(steps[i], i, naive);
            var outcome = file.Ledger.Post(entry);
            Assert.True(outcome is Posted == isAccepted, $"step {i}, {entry}: {(outcome as NotPosted)?.Refusal.Sentence ?? "accepted"}");
            Compare(file, naive);
        }

        Assert.Empty(file.Ledger.Check(null, default).Problems);
        file.Reopen();
        Compare(file, naive);
    }

    private static void Compare(TemporaryLedger file, NaiveLedger naive)
    {
        var now = file.Ledger.HoldingsOn(file.Ledger.Today);
        foreach (var item in now.Items)
            Assert.Equal(naive.OnHand(item.Code), now.OnHand(item).Base);
        foreach (var bath in new[] { "F0", "F1", "F2", "F3" })
            Assert.Equal(naive.AreaOf(bath), now.Bath(bath)?.Worked.Hundredths ?? -1);
        Assert.Equal(naive.Entries + Definitions, file.Ledger.Journal(file.Ledger.Today, null, 1000).Count);
    }

    private static (Entry Entry, bool IsAccepted) Next((int Kind, int Which, int Amount) step, int index, NaiveLedger naive)
    {
        var item = new[] { "pan", "syrup", "fix", "gloves" }[step.Which];
        var unit = step.Which switch { 0 => Unit.Sheet, 3 => Unit.Piece, _ => Unit.Millilitre };
        var scale = unit.BasePerUnit() * (unit == Unit.Millilitre ? 20 : 1);
        var quantity = new Quantity(step.Amount * scale, unit);
        var bath = $"F{step.Which}";
        var (key, date) = ($"step-{index}", Some.Day(6, 1));
        return step.Kind switch
        {
            0 or 1 => (
                Some.Delivery(item, step.Amount % 4) with { Key = key, Date = date },
                step.Amount % 4 > 0 && naive.Receive(item, step.Amount % 4, new[] { 25L, 1_000_000, 1_000_000, 100 }[step.Which])),
            2 => (new Opening { Key = key, Date = date, Container = item }, naive.Open(item)),
            3 => (
                new Discard { Key = key, Date = date, What = item, Quantity = quantity, Reason = "spilt" },
                naive.ThrowAway(item, quantity.Base)),
            4 => (
                new StockCount { Key = key, Date = date, What = item, Found = quantity, Reason = "counted" },
                quantity.Base >= 0 && naive.Count(item, quantity.Base)),
            5 => (Some.Bath(bath) with { Key = key, Date = date }, naive.Mix(bath, "fix", 300_000)),
            6 => (new Discard { Key = key, Date = date, What = bath, Reason = "spent" }, naive.PourOut(bath)),
            7 => (
                Some.Session($"S{index}", step.Amount, Fate.Negative, bath) with { Key = key, Date = date },
                step.Amount > 0 && naive.Session(bath, "pan", step.Amount, 80 * Area.PerSquareInch, "syrup", 25_000, "gloves")),
            _ => (
                new Undo { Key = key, Date = date, Number = Definitions + 1 + step.Amount, Reason = "mistake" },
                step.Amount >= 0 && naive.Correct(step.Amount)),
        };
    }
}
