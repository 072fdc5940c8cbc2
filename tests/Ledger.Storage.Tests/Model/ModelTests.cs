using CsCheck;

namespace Ledger.Storage.Tests.Model;

/// <summary>
/// Random entries, valid and invalid, on the real ledger and on a naive one: the same are accepted, and the same is
/// left.
/// </summary>
public sealed class ModelTests
{
    private const long Definitions = 5;

    internal static readonly Gen<(int Kind, int Which, int Amount, int Day)[]> Steps =
        Gen.Select(Gen.Int[0, 10], Gen.Int[0, 3], Gen.Int[-1, 60], Gen.Int[1, 4]).Array[1, 30];

    /// <summary>How many lives a test run tries; TRAYLEDGER_LIVES says another number.</summary>
    internal static readonly int Lives = int.TryParse(Environment.GetEnvironmentVariable("TRAYLEDGER_LIVES"),
        out var lives) ? lives : 40;

    [Fact]
    public void The_ledger_agrees_with_a_naive_one_after_every_entry() => Steps.Sample(Run, iter: Lives, threads: 1);

    private static void Run((int Kind, int Which, int Amount, int Day)[] steps)
    {
        using var file = new TemporaryLedger();
        foreach (var item in new[] { Some.Film(), Some.Syrup(), Some.Fixer(), Some.Gloves() })
            file.Accept(Some.Define(item));
        file.Accept(Some.Process());
        var (naive, lives) = (new NaiveLedger(), new List<int>());
        for (var i = 0; i < steps.Length; i++)
        {
            var (entry, isAccepted) = Next(steps[i], i, naive, lives);
            var outcome = file.Ledger.Post(entry);
            Assert.True(outcome is Posted == isAccepted,
                $"step {i}, {entry}: {(outcome as NotPosted)?.Refusal.Sentence ?? "accepted"}");
            if (isAccepted)
                lives.Add(steps[i].Kind);
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
        Assert.Equal(
            naive.Boxes.Order(), now.Containers.Select(container => (container.Code, container.Held.Base)).Order());
        foreach (var bath in new[] { "F0", "F1", "F2", "F3" })
            Assert.Equal(naive.AreaOf(bath), now.Bath(bath)?.Worked.Hundredths ?? -1);
        Assert.Equal(naive.Entries + Definitions, file.Ledger.Journal(file.Ledger.Today, null, 1000).Count);
    }

    internal static (Entry Entry, bool IsAccepted) Next(
        (int Kind, int Which, int Amount, int Day) step, int index, NaiveLedger naive, List<int> lives)
    {
        var item = new[] { "pan", "syrup", "fix", "gloves" }[step.Which];
        var unit = step.Which switch { 0 => Unit.Sheet, 3 => Unit.Piece, _ => Unit.Millilitre };
        var scale = unit.BasePerUnit() * (unit == Unit.Millilitre ? 20 : 1);
        var pack = new[] { 25L, 1_000_000, 1_000_000, 100 }[step.Which];
        var quantity = new Quantity(step.Amount * scale, unit);
        var bath = $"F{step.Which}";
        var (key, date) = ($"step-{index}", Some.Day(6, step.Day));
        return step.Kind switch
        {
            0 or 1 => (
                Some.Delivery(item, Math.Max(0, step.Amount % 4)) with { Key = key, Date = date },
                naive.Say(step.Day, (shelf, packs) => shelf.Receive(item, packs, pack), Math.Max(0, step.Amount % 4))),
            2 => (new Opening { Key = key, Date = date, Container = item },
                naive.Say(step.Day, (shelf, _) => shelf.Open(item), 0)),
            3 => (
                new Discard { Key = key, Date = date, What = item, Quantity = quantity, Reason = "spilt" },
                naive.Say(step.Day, (shelf, amount) => shelf.ThrowAway(item, amount), quantity.Base)),
            4 => (
                new StockCount { Key = key, Date = date, What = item, Found = quantity, Reason = "counted" },
                naive.Say(step.Day, (shelf, amount) => shelf.Count(item, amount), quantity.Base)),
            5 => (Some.Bath(bath) with { Key = key, Date = date },
                naive.Say(step.Day, (shelf, _) => shelf.Mix(bath, "fix", 300_000), 0)),
            6 => (
                new Discard { Key = key, Date = date, What = bath, Reason = "spent" },
                naive.Say(step.Day, (shelf, _) => shelf.PourOut(bath), 0)),
            7 => (
                Some.Session($"S{index}", step.Amount, Fate.Negative, bath) with { Key = key, Date = date },
                naive.Say(
                    step.Day,
                    (shelf, sheets) => shelf.Session(bath, "pan", sheets, 80 * Area.PerSquareInch,
                        "syrup", 25_000, "gloves"), step.Amount)),
            8 or 9 => (
                new Undo { Key = key, Date = date, Number = step.Amount < 0 ? 9_999 : Definitions + 1 + step.Amount,
                    Reason = "mistake" },
                step.Amount >= 0 && naive.Undo(step.Amount)),
            _ => Amended(step.Amount, step.Which + 1, key, naive, lives),
        };
    }

    /// <summary>A delivery was of other packs, a session of other sheets.</summary>
    private static (Entry Entry, bool IsAccepted) Amended(int index, int amount, string key,
        NaiveLedger naive, List<int> lives)
    {
        var kind = index >= 0 && index < lives.Count ? lives[index] : -1;
        var change = kind == 7 ? new FieldChange(1, "sheets", $"{amount}") : new FieldChange(1, "packs", $"{amount}");
        return (
            new Amendment { Key = key, Date = Some.Day(6, 9), Number = index < 0 ? 9_999 : Definitions + 1 + index,
                Reason = "mistyped", Changes = [change] },
            kind is 0 or 1 or 7 && naive.Amend(index, amount));
    }
}
