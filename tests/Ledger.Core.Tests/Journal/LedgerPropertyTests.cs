using CsCheck;

namespace Ledger.Core.Tests.Journal;

/// <summary>What holds whatever is entered, in whatever order.</summary>
public sealed class LedgerPropertyTests
{
    private static readonly Gen<string[]> Entries = EntryGens.Entry.Array[1, 40];

    [Fact]
    public void The_holdings_are_the_sum_of_the_movements() => Entries.Sample(entries =>
    {
        var ledger = Shelves.WithBath();
        foreach (var entry in entries)
        {
            var before = ledger.Held();
            if (ledger.Preview(EntryWords.Read(entry)) is Accepted)
                ledger.Post($"{entry} anyway=yes");
            else
                Assert.Equal(before, ledger.Held());
            Assert.Equal(ledger.Balances(), ledger.Held());
        }
    });

    /// <summary>
    /// Moved one by one without the first count, the second leaves the box empty; the third fills it again.
    /// </summary>
    [Fact]
    public void A_count_taken_back_leaves_what_later_counts_left()
    {
        var ledger = Shelves.WithBath();
        var boxes = ledger.Held();
        foreach (var found in new[] { 82, 57, 60 })
            ledger.Post($"count item=fen80 found={found}sheet");
        ledger.Post($"undo entry={ledger.Last - 2}");
        Assert.Equal(ledger.Balances(), ledger.Held());
        Assert.NotEqual(boxes, ledger.Held());
    }

    [Fact]
    public void Nothing_is_ever_below_nothing() => Entries.Sample(entries =>
    {
        var ledger = Shelves.WithBath();
        foreach (var entry in entries)
        {
            if (ledger.Preview(EntryWords.Read(entry)) is Accepted)
                ledger.Post($"{entry} anyway=yes");
            Assert.All(ledger.Balances().Values,
                held => Assert.True(held is { Quantity: > 0, Value.Millionths: >= 0 }));
            Assert.All(ledger.All[^1].Movements,
                movement => Assert.True(movement is { Quantity: > 0, Value.Millionths: >= 0 }));
        }
    });

    [Fact]
    public void An_entry_and_its_undo_change_no_balance() => Entries.Sample(entries =>
    {
        var ledger = Shelves.WithBath();
        foreach (var entry in entries)
        {
            var before = ledger.Held();
            if (EntryWords.Read(entry) is Core.Journal.Entries.Undo
                || ledger.Preview(EntryWords.Read(entry)) is Refused)
                continue;
            ledger.Post($"{entry} anyway=yes");
            ledger.Post($"undo entry={ledger.Last}");
            Assert.Equal(before, ledger.Held());
            if (ledger.Preview(EntryWords.Read(entry)) is Accepted)
                ledger.Post($"{entry} anyway=yes");
        }
    });

    [Fact]
    public void Every_effect_begins_where_the_shelf_stands_and_ends_where_it_will() => Entries.Sample(entries =>
    {
        var ledger = Shelves.WithBath();
        foreach (var entry in entries)
        {
            if (ledger.Preview(EntryWords.Read(entry)) is not Accepted { Posting: { } posting })
                continue;
            var before = Texts(ledger);
            ledger.Post($"{entry} anyway=yes");
            var after = Texts(ledger);
            foreach (var effect in posting.Effects.Where(effect => effect.What.Contains('/', StringComparison.Ordinal)))
            {
                if (effect.Before == "sealed")
                    continue;
                Assert.Equal(before.GetValueOrDefault(effect.What, "-"), effect.Before);
                if (after.TryGetValue(effect.What, out var held))
                    Assert.Equal(held, effect.After);
                else
                    Assert.StartsWith("0 ", effect.After, StringComparison.Ordinal);
            }
        }
    });

    [Fact]
    public void All_money_is_accounted_for() => Entries.Sample(entries =>
    {
        var ledger = Shelves.WithBath();
        foreach (var entry in entries)
            if (ledger.Preview(EntryWords.Read(entry)) is Accepted)
                ledger.Post($"{entry} anyway=yes");
        var reading = new CostReading(Facts.Of(ledger));
        Assert.Equal(reading.Spent, reading.Used + reading.OnHand + reading.StillInBaths);
        Assert.True(reading.Reconciles);
        Assert.Equal(
            reading.Film + reading.SpoiledFilm, reading.Sheets.Aggregate(Money.Zero, (sum, sheet) => sum + sheet.Film));
        Assert.Equal(
            reading.Film + reading.SpoiledFilm + reading.Chemistry + reading.Supplies,
            reading.Sheets.Aggregate(Money.Zero, (sum, sheet) => sum + sheet.Total));
        foreach (var grouping in Enum.GetValues<CostGrouping>())
            Assert.Equal(reading.Used.Millionths, CostSlices.Of(reading, grouping).Sum(slice => slice.Used.Millionths));
    });

    /// <summary>
    /// Draws on different boxes do not depend on each other: whatever days they stand on, the costs are the same.
    /// </summary>
    [Fact]
    public void Other_days_for_entries_of_different_lots_change_no_total() => Gen
        .Select(Gen.Int[0, 40].Array[5], Gen.Int[0, 40].Array[5], Gen.Int[1, 6].Array[5])
        .Sample((days, otherDays, sheets) => Assert.Equal(UsedOn(days, sheets), UsedOn(otherDays, sheets)), iter: 200);

    private static (Money Used, Money OnHand) UsedOn(int[] days, int[] sheets)
    {
        var ledger = Shelves.WithBath();
        for (var i = 0; i < days.Length; i++)
            ledger.Post($"delivery item=reed400 packs=1 price={10 + i * 7.77m} date=2026-01-11 anyway=yes");
        var first = ledger.Holdings.LastContainerNumber("reed400") - days.Length + 1;
        for (var i = 0; i < days.Length; i++)
        {
            var date = new NodaTime.LocalDate(2026, 2, 1).PlusDays(days[i]);
            ledger.Post(
                $"session session=S{i} line={sheets[i]}_reed400_from_reed400/{first + i} date={Dates.Text(date)}");
        }

        var reading = new CostReading(Facts.Of(ledger));
        Assert.True(reading.Reconciles);
        return (reading.Film, reading.OnHand);
    }

    private static Dictionary<string, string> Texts(InMemoryLedger ledger) =>
        ledger.Holdings.Containers.ToDictionary(container => container.Code,
            container => container.Held.ToText(MeasureStyle.Metric));
}
