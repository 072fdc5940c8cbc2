namespace Ledger.Core.Tests.Journal;

public sealed class HoldingsTests
{
    private readonly InMemoryLedger _ledger = Shelves.Stocked();

    [Fact]
    public void Names_are_found_whatever_the_case_and_the_blanks()
    {
        _ledger.Post("bath bath=F1");
        Assert.Equal("fen80", _ledger.Holdings.Item(" FEN80 ")?.Code);
        Assert.Equal("pm", _ledger.Holdings.Process("PM")?.Name);
        Assert.Equal("F1", _ledger.Holdings.Bath("f1")?.Code);
        Assert.Equal("fen80/1", _ledger.Holdings.Container("Fen80/1")?.Code);
        Assert.Null(_ledger.Holdings.Item("nothing"));
    }

    /// <summary>The day on which syrup/1 fell below half of its 1000 ml.</summary>
    private const string HalfEmpty = """
        what                                                    | half empty on
        count item=syrup/1 found=500ml date=2026-02-01          |
        count item=syrup/1 found=499.999ml date=2026-02-02      | 2026-02-02
        count item=syrup/1 found=100ml date=2026-02-10          | 2026-02-02
        count item=syrup/1 found=600ml date=2026-02-11          |
        count item=syrup/1 found=300ml date=2026-02-20          | 2026-02-20
        """;

    [Fact]
    public void A_bottle_is_half_empty_from_the_day_it_falls_below_half() => Assert.All(Table.Read(HalfEmpty), row =>
    {
        _ledger.Post(row["what"]);
        Assert.Equal(row["half empty on"],
            _ledger.Holdings.Container("syrup/1")!.HalfEmptyOn is { } day ? Text(day) : "");
    });

    [Fact]
    public void A_full_bottle_does_not_begin_half_empty()
    {
        Assert.All(_ledger.Holdings.Containers, container => Assert.Null(container.HalfEmptyOn));
        _ledger.Post("delivery item=syrup packs=0.3");
        Assert.Equal(Some.Today, _ledger.Holdings.Container("syrup/3")!.HalfEmptyOn);
    }

    [Fact]
    public void What_is_empty_is_held_no_more_but_its_number_is_not_given_again()
    {
        _ledger.Post("discard what=gloves/1");
        Assert.Null(_ledger.Holdings.Container("gloves/1"));
        Assert.Empty(_ledger.Holdings.ContainersOf("gloves"));
        _ledger.Post("delivery item=gloves");
        Assert.Equal(["gloves/2"], _ledger.Holdings.ContainersOf("gloves").Select(container => container.Code));
        Assert.Equal(108, _ledger.Holdings.Container("gloves/2")!.Place.Value);
    }

    [Fact]
    public void Items_stand_by_kind_and_then_by_code() => Assert.Equal(
        ["fen80", "reed400", "fix", "stop", "syrup", "gloves"], _ledger.Holdings.Items.Select(item => item.Code));

    private static string Text(LocalDate date) => Core.Measures.Dates.Text(date);
}
