namespace Ledger.Core.Tests.Journal.Rules;

public sealed class OpeningTests
{
    private readonly InMemoryLedger _ledger = Shelves.Stocked();

    [Fact]
    public void A_container_is_open_from_its_day_on()
    {
        var posting = _ledger.Post("opening container=syrup/2 date=2026-02-01");
        Assert.Equal("opened syrup/2", posting.Summary);
        Assert.Equal([new Effect("syrup/2", "sealed", "opened 2026-02-01")], posting.Effects);
        Assert.Empty(posting.Movements);
        Assert.Equal(new(2026, 2, 1), _ledger.Holdings.Container("syrup/2")!.OpenedOn);
    }

    [Fact]
    public void An_items_name_opens_the_sealed_container_that_is_reached_for_first()
    {
        _ledger.Post("delivery item=fen80 batch=B2 date=2026-02-01");
        Assert.Equal("opened fen80/1", _ledger.Post("opening container=fen80").Summary);
        Assert.Equal("opened fen80/3", _ledger.Post("opening container=fen80 batch=b2").Summary);
        Assert.Equal("opened fen80/2", _ledger.Post("opening container=fen80").Summary);
    }

    [Fact]
    public void The_first_draw_opens_a_sealed_container()
    {
        _ledger.Post("bath date=2026-02-01");
        Assert.Equal(new(2026, 2, 1), _ledger.Holdings.Container("fix/1")!.OpenedOn);
    }

    [Fact]
    public void A_draw_recorded_late_shows_that_the_container_was_open_by_then()
    {
        _ledger.Post("opening container=fix/1 date=2026-03-01");
        _ledger.Post("bath date=2026-02-01");
        Assert.Equal(new(2026, 2, 1), _ledger.Holdings.Container("fix/1")!.OpenedOn);
    }

    [Fact]
    public void A_container_that_is_thrown_away_whole_was_never_opened() => Assert.Empty(
        _ledger.Post("discard what=fen80/1").Facts.OfType<ContainerOpened>());

    [Fact]
    public void An_opening_recorded_late_does_not_make_a_container_fresher()
    {
        var ledger = Shelves.WithBath();
        Assert.Contains("is open since 2026-02-01", ledger.Refuse("opening container=fix/1 date=2026-03-01").Sentence,
            StringComparison.Ordinal);
    }
}
