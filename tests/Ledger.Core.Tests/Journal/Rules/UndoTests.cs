namespace Ledger.Core.Tests.Journal.Rules;

public sealed class UndoTests
{
    /// <summary>Each entry, posted and reversed again, leaves every place as it was.</summary>
    [Theory]
    [InlineData("delivery item=fen80 packs=2 price=99.99")]
    [InlineData("delivery item=fen80 packs=1.2 price=0.01")]
    [InlineData("opening container=fen80/1")]
    [InlineData("bath bath=F2 working_ml=3500")]
    [InlineData("bath bath=F2 working_ml=3550 book_difference=yes")]
    [InlineData("session line=7_fen80 line=3_reed400_reject")]
    [InlineData("session line=25_fen80_2500ml book_difference=yes")]
    [InlineData("discard what=F1")]
    [InlineData("discard what=fen80/2")]
    [InlineData("discard what=fen80 quantity=30sheet")]
    [InlineData("count item=syrup found=1989ml")]
    [InlineData("count item=syrup found=2011ml")]
    [InlineData("count item=syrup found=0ml")]
    public void A_undo_undoes_an_entry(string entry)
    {
        var ledger = Shelves.WithBath();
        var (before, opened) = (ledger.Held(), Opened(ledger));
        ledger.Post($"{entry} anyway=yes");
        var original = ledger.All[^1];
        var undo = ledger.Post($"undo entry={ledger.Last}");

        Assert.Equal(before, ledger.Held());
        Assert.Equal(before, ledger.Balances());
        Assert.Equal(opened, Opened(ledger));
        Assert.Equal(original.Movements.Select(movement => movement.Reversed()).Reverse(), undo.Movements);
        Assert.Equal($"took back entry {ledger.Last - 1} ({original.Summary}): mistaken", undo.Summary);
    }

    [Fact]
    public void It_stands_on_the_day_of_what_it_reverses()
    {
        var ledger = Shelves.WithBath();
        ledger.Post("session line=4_fen80 date=2026-02-10");
        Assert.Equal(new(2026, 2, 10), ledger.Post($"undo entry={ledger.Last} date=2026-03-15").Entry.Date);
    }

    [Fact]
    public void The_entry_is_named_by_its_number_or_by_its_reference()
    {
        var ledger = Shelves.WithBath();
        ledger.Post("session line=4_fen80 reference=sessions:S1 date=2026-02-10");
        var (number, before) = (ledger.Last, Shelves.WithBath().Balances());
        var undo = Assert.IsType<Ledger.Core.Journal.Entries.Undo>(ledger.Post("undo entry=sessions:S1").Entry);
        Assert.Equal((number, new(2026, 2, 10)), (undo.Number, undo.Date));
        Assert.Equal(before, ledger.Balances());
        Assert.Equal(RefusalKind.AlreadyThere, ledger.Refuse("undo entry=sessions:S1").Kind);
        Assert.Equal(RefusalKind.Unknown, ledger.Refuse("undo entry=sessions:S2").Kind);
    }

    [Fact]
    public void Its_effects_show_what_comes_back()
    {
        var ledger = Shelves.WithBath();
        ledger.Post("session line=4_fen80");
        Assert.Contains(new Effect("fen80/1", "21 sheets", "25 sheets"),
            ledger.Post($"undo entry={ledger.Last}").Effects);
    }

    [Fact]
    public void A_reversed_session_gives_its_name_free_and_takes_its_work_from_the_bath()
    {
        var ledger = Shelves.WithBath();
        ledger.Post("session line=4_fen80");
        ledger.Post($"undo entry={ledger.Last}");
        Assert.Equal(0m, ledger.Holdings.Bath("F1")!.Worked.SquareInches);
        ledger.Post("session line=3_fen80");
        Assert.Equal(240m, ledger.Holdings.Bath("F1")!.Worked.SquareInches);
    }

    [Fact]
    public void Later_entries_are_corrected_first()
    {
        var ledger = Shelves.Stocked();
        ledger.Post("bath");
        ledger.Post("session line=4_fen80");
        var session = ledger.Last;
        Assert.Equal(RefusalKind.DependedOn, ledger.Refuse($"undo entry={session - 1}").Kind);
        Assert.Equal(RefusalKind.DependedOn, ledger.Refuse("undo entry=8").Kind);
        ledger.Post($"undo entry={session}");
        ledger.Post($"undo entry={session - 1}");
        ledger.Post("undo entry=8");
        Assert.Empty(ledger.Holdings.ContainersOf("fen80"));
        Assert.Empty(ledger.Holdings.Baths);
    }

    [Fact]
    public void It_never_leaves_money_in_an_empty_bottle()
    {
        // Three sheets for 10.00, one found at 3.333333, three of the four thrown away at 9.999999: the last one stands
        // at 3.333334. To take the found one back would leave a millionth in a box that is gone.
        var ledger = Shelves.Empty();
        ledger.Post("delivery item=fen80 packs=0.12 price=83.333333");
        ledger.Post("count item=fen80 found=4sheet");
        var count = ledger.Last;
        ledger.Post("discard what=fen80 quantity=3sheet");
        Assert.Equal(RefusalKind.DependedOn, ledger.Refuse($"undo entry={count}").Kind);
    }

    [Fact]
    public void It_never_leaves_sheets_in_a_box_that_never_came()
    {
        var ledger = Shelves.Stocked();
        ledger.Post("discard what=fen80 quantity=3sheet");
        ledger.Post("count item=fen80/1 found=27sheet anyway=yes");
        Assert.Equal(RefusalKind.DependedOn, ledger.Refuse("undo entry=8").Kind);
    }

    private static Dictionary<string, NodaTime.LocalDate?> Opened(InMemoryLedger ledger) =>
        ledger.Holdings.Containers.ToDictionary(container => container.Code, container => container.OpenedOn);
}
