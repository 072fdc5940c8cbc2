namespace Ledger.Core.Tests.Support;

/// <summary>What a ledger in memory knows of the costs of its whole life, straight from its postings.</summary>
internal static class Facts
{
    public static CostFacts Of(InMemoryLedger ledger)
    {
        var standing = ledger.Standing.ToList();
        var movements = standing.SelectMany(posting => posting.Movements).ToList();
        var baths = Baths(standing);
        var sessions = SessionCosts.Of(Sessions(standing, baths, ledger));
        return new(
            Some.Earlier,
            Some.Today,
            Money.Zero,
            Sum(movements.Where(movement => movement.From == Places.Supplier)),
            ledger.Holdings.Containers.Aggregate(Money.Zero, (sum, container) => sum + container.Value),
            Sum(movements.Where(movement => movement.To == Places.Discarded)),
            [],
            Sum(movements.Where(movement => movement.To == Places.LostOrGained))
                - Sum(movements.Where(movement => movement.From == Places.LostOrGained)),
            [.. baths.Values.Select(bath => new BathUse(
                bath.Share, Area.Zero, bath.Worked, WasMixedBefore: false,
                standing.SelectMany(posting => posting.Facts).OfType<BathEnded>()
                    .Any(ended => ended.Place == bath.Place)))],
            sessions)
        {
            Losses = [
                .. standing.SelectMany(
                    posting => posting.Movements.SelectMany(movement => Losses(posting, movement, ledger)))],
        };
    }

    /// <summary>What the sessions of the ledger used.</summary>
    public static IReadOnlyList<SessionUse> SessionsOf(InMemoryLedger ledger)
    {
        var standing = ledger.Standing.ToList();
        return [.. Sessions(standing, Baths(standing), ledger)];
    }

    private static IEnumerable<StockLoss> Losses(Posting posting, Movement movement, InMemoryLedger ledger)
    {
        var lots = ledger.All.SelectMany(any => any.Facts).OfType<LotReceived>();
        var item = ledger.Holdings.Item(lots.First(received => received.Lot.Id == movement.Lot).Lot.Item)!;
        if (movement.To == Places.Discarded || movement.To == Places.LostOrGained)
            yield return new(posting.Entry.Date, item.Code, item.Kind, movement.Quantity, movement.Value);
        if (movement.From == Places.LostOrGained)
            yield return new(posting.Entry.Date, item.Code, item.Kind, -movement.Quantity, Money.Zero - movement.Value);
    }

    private static Dictionary<PlaceId, BathLife> Baths(List<Posting> standing)
    {
        var baths = new Dictionary<PlaceId, BathLife>();
        foreach (var posting in standing)
            foreach (var mixed in posting.Facts.OfType<BathMixed>())
                baths[mixed.Bath.Place] = new(
                    mixed.Bath.Place,
                    new(mixed.Bath.Code, Sum(posting.Movements.Where(movement => movement.To == mixed.Bath.Place)),
                        mixed.Bath.TotalCapacity ?? Area.Zero));
        return baths;
    }

    private static IEnumerable<SessionUse> Sessions(List<Posting> standing, Dictionary<PlaceId, BathLife> baths,
        InMemoryLedger ledger)
    {
        var items = ledger.All.SelectMany(posting => posting.Facts).OfType<LotReceived>()
            .ToDictionary(received => received.Lot.Id, received => ledger.Holdings.Item(received.Lot.Item)!);
        foreach (var posting in standing)
            foreach (var held in posting.Facts.OfType<SessionHeld>())
            {
                var bath = held.Bath is { } place ? baths[place] : null;
                var before = bath?.Worked ?? Area.Zero;
                if (bath is not null)
                    bath.Worked += posting.Facts.OfType<BathWorked>().Single(worked => worked.IsFirst).Weighted;
                yield return new(
                    held.Session,
                    posting.Entry.Date,
                    UsedUp(item => item.Role == ItemRole.Developer),
                    UsedUp(item => item.Kind == ItemKind.Chemical && item.Role != ItemRole.Developer),
                    UsedUp(item => item.Kind == ItemKind.Supply),
                    bath is null ? [] : [new(bath.Share, before, bath.Worked)],
                    [.. posting.Facts.OfType<SheetsDeveloped>().Select(sheets => new FilmUse(
                        items[sheets.Lot].Code, sheets.Sheets, sheets.Area, sheets.Cost, sheets.Fate))]);

                Money UsedUp(Func<Item, bool> which) =>
                    Sum(posting.Movements.Where(movement => movement.To == Places.UsedUp
                        && which(items[movement.Lot])));
            }
    }

    private static Money Sum(IEnumerable<Movement> movements) =>
        movements.Aggregate(Money.Zero, (sum, movement) => sum + movement.Value);

    private sealed class BathLife(PlaceId place, BathShare share)
    {
        public PlaceId Place => place;

        public BathShare Share => share;

        public Area Worked { get; set; }
    }
}
