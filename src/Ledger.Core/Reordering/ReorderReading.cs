using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Core.Planning;
using Ledger.Core.Stock;

namespace Ledger.Core.Reordering;

/// <summary>When an item is to be ordered, how much of it, and why.</summary>
public sealed class ReorderReading
{
    /// <summary>The service level of an item of which the user has set none.</summary>
    public const decimal UsualServiceLevel = 0.95m;

    private readonly double _perDay;
    private LeadTimeDemand? _demand;

    internal ReorderReading(
        Item item, Holdings holdings, ItemPast past, IReadOnlyList<PlannedDemand> known,
        IReadOnlyList<SessionSize> sizes)
    {
        var today = holdings.AsOf;
        (Item, Style, Today) = (item, holdings.Settings.Style, today);
        History = past.Series;
        Pattern = DemandPatterns.Of(History.Uses);
        Forecast = Forecast.Of(History);
        LeadTime = LeadTime.Of(item.LeadTimeDays, past.DeliveryDays);
        ServiceLevel = item.ServiceLevel ?? UsualServiceLevel;
        Terms = holdings.Orders.Terms(item.Code);
        _perDay = (Forecast?.PerPeriod ?? 0) / History.PeriodDays;

        var shelf = new ShelfReading(item, holdings.ContainersOf(item.Code), today);
        OnHand = shelf.OnHand;
        Expired = shelf.Expired;
        Suspect = shelf.Suspect;
        Dead = shelf.Dead;
        Known = [.. known.OrderBy(one => one.On)];
        Usable = item.Of(UsableStock.Of(shelf, _perDay, Known));
        Lines = [.. holdings.Orders.LinesOf(item.Code)];
        OnOrder = holdings.Orders.OnOrder(item);
        Planned = item.Of(Known.Sum(one => one.Quantity.Base));
        PriceRise = holdings.Orders.PriceRises.FirstOrDefault(
            rise => rise.Item.Equals(item.Code, StringComparison.OrdinalIgnoreCase)
                && rise.From > today);
        LastPrice = past.Price;

        if (Forecast is not null)
            WorkOut(Forecast);
        ReorderPoint = item.Of(Math.Max(Computed?.Base ?? 0, item.MinimumOnHand?.Base ?? 0));
        Path = new(today, Usable.Base, _perDay,
            Lines.Select(found => (ExpectedOn(found.Line), found.Line.Outstanding.Base)),
            Known.Select(one => (one.On, one.Quantity.Base)), ahead: LeadTime.Days + History.PeriodDays);
        RunsOutOn = Path.RunsOutOn();
        EnoughFor = Planning.EnoughFor.Of(item, Usable, holdings, sizes);
        Suggestion = OrderSuggestion.Of(this);
        Basis = ReorderBasis.Of(this);
    }

    /// <summary>The item.</summary>
    public Item Item { get; }

    /// <summary>The day of the reading.</summary>
    public LocalDate Today { get; }

    /// <summary>The units the user reads.</summary>
    public MeasureStyle Style { get; }

    /// <summary>What was used, period by period.</summary>
    public DemandSeries History { get; }

    /// <summary>How it is used; null when nothing was.</summary>
    public DemandPattern? Pattern { get; }

    /// <summary>What is expected to be used; null when the history is too short for one.</summary>
    public Forecast? Forecast { get; }

    /// <summary>The forecast for a week, in the item's unit; null without one.</summary>
    public decimal? PerWeek => Forecast is null ? null : InUnits(_perDay * 7);

    /// <summary>What is expected to be used in a day, in base units; zero when it is not known.</summary>
    public double PerDay => _perDay;

    /// <summary>How long a delivery takes.</summary>
    public LeadTime LeadTime { get; }

    /// <summary>How often the stock should last until the delivery.</summary>
    public decimal ServiceLevel { get; }

    /// <summary>What is used until a delivery comes, on average, in the item's unit; null without a forecast.</summary>
    public decimal? LeadTimeDemand { get; private set; }

    /// <summary>What the computed reorder point is above that, in the item's unit; null without a forecast.</summary>
    public decimal? SafetyStock { get; private set; }

    /// <summary>
    /// The reorder point from the item's own history: what suffices until the delivery at the service level, and never
    /// less than the forecast for that time; null without a forecast.
    /// </summary>
    public Quantity? Computed { get; private set; }

    /// <summary>
    /// The chance with which the reorder point really suffices until the delivery, to a thousandth, rounded down: whole
    /// sheets reach more than was asked for. Null without a forecast.
    /// </summary>
    public decimal? ReachedLevel => Reaches(ReorderPoint);

    /// <summary>The textbook's normal approximation beside it; null without a forecast.</summary>
    public NormalLeadTimeDemand? Normal { get; private set; }

    /// <summary>The reorder point by the normal approximation; null without a forecast.</summary>
    public Quantity? NormalReorderPoint => Normal is null ? null : RoundedUp(Normal.Level((double)ServiceLevel));

    /// <summary>The level at which to order: computed, or the user's own minimum where that is higher.</summary>
    public Quantity ReorderPoint { get; }

    /// <summary>Whether the user's minimum decides, because it is higher or nothing could be computed.</summary>
    public bool MinimumDecides =>
        Item.MinimumOnHand is { } minimum && (Computed is not { } computed || minimum > computed);

    /// <summary>All that is there, expired or not.</summary>
    public Quantity OnHand { get; }

    /// <summary>The part of it that has expired.</summary>
    public Quantity Expired { get; }

    /// <summary>The part of it that is under suspicion.</summary>
    public Quantity Suspect { get; }

    /// <summary>The good part that cannot be drawn from its bottles.</summary>
    public Quantity Dead { get; }

    /// <summary>What is there and can be used before its date.</summary>
    public Quantity Usable { get; }

    /// <summary>
    /// For how many months what can be used lasts at the usual rate, to a tenth, rounded down; null when no use is
    /// expected. A mean month has 30.4375 days.
    /// </summary>
    public decimal? MonthsOfCover =>
        _perDay > 0 ? (decimal)Math.Floor(Math.Min(Usable.Base / (_perDay * 30.4375) * 10, 1e6)) / 10 : null;

    /// <summary>The months of cover in words: "6.1 months", "1 month"; null when no use is expected.</summary>
    public string? CoverText =>
        MonthsOfCover is not { } months ? null : $"{Scaled.ToText(months, 1)} {Counted.Noun(months, "month")}";

    /// <summary>", 3 days late" when an order would have had to be placed by now; empty otherwise.</summary>
    public string LateText => Suggestion is { IsNow: true } order && order.DaysLate(Today) is > 0 and var days
        ? $", {Counted.Of(days, "day")} late" : "";

    /// <summary>What is on order.</summary>
    public Quantity OnOrder { get; }

    /// <summary>What all open plans will use.</summary>
    public Quantity Planned { get; }

    /// <summary>What is planned.</summary>
    public IReadOnlyList<PlannedDemand> Known { get; }

    /// <summary>The open order lines.</summary>
    public IReadOnlyList<(Order Order, OrderLine Line)> Lines { get; }

    /// <summary>How the user orders the item.</summary>
    public OrderTerms Terms { get; }

    /// <summary>The next price rise that was announced; null when there is none.</summary>
    public PriceRise? PriceRise { get; }

    /// <summary>What a pack cost when it was last bought; null when it never was.</summary>
    public LastPrice? LastPrice { get; }

    /// <summary>What is there and on order, less what is planned until an order of today would have come.</summary>
    public Quantity Position => Item.Of((long)Path.Position(Today));

    /// <summary>Whether the stock is below the user's minimum or down to the computed reorder point.</summary>
    public bool IsDue => Position < (Item.MinimumOnHand ?? Item.Of(0))
        || (Computed is { IsZero: false } computed && Position <= computed);

    /// <summary>How the stock is expected to go.</summary>
    public StockPath Path { get; }

    /// <summary>The day on which nothing is left; null when that is far away or not known.</summary>
    public LocalDate? RunsOutOn { get; }

    /// <summary>
    /// For how many batches and sessions that is enough; none of what no process develops or fixes with.
    /// </summary>
    public IReadOnlyList<EnoughFor> EnoughFor { get; }

    /// <summary>
    /// The day on which nothing is left and what there is enough for until then; null when that is far away or not
    /// known.
    /// </summary>
    public string? RunsOutText => RunsOutOn is not { } day ? null
        : Dates.Text(day) + (Planning.EnoughFor.Text(EnoughFor) is { Length: > 0 } enough ? $", after {enough}" : "");

    /// <summary>When to order and how much; null when nothing calls for an order.</summary>
    public OrderSuggestion? Suggestion { get; }

    /// <summary>What the suggestion rests on, in a sentence.</summary>
    public string Basis { get; }

    /// <summary>The readings of all items of a ledger; none where it does not remember use.</summary>
    public static IReadOnlyList<ReorderReading> Of(ILedger ledger, Holdings holdings) =>
        Of(ledger, holdings, PlannedDemand.Of(holdings), holdings.Items);

    /// <summary>
    /// The readings of those items only that may have to be ordered: of no other is anything used, planned, on order or
    /// asked for by a minimum.
    /// </summary>
    public static IReadOnlyList<ReorderReading> InUse(ILedger ledger, Holdings holdings)
    {
        var known = PlannedDemand.Of(holdings).ToList();
        return Of(ledger, holdings, known, holdings.ItemsInUse
            .UnionBy(known.Select(one => holdings.Item(one.Item)).OfType<Item>(), item => item.Id)
            .OrderBy(item => item.Kind).ThenBy(item => item.Code, StringComparer.OrdinalIgnoreCase));
    }

    /// <summary>The reading of one item; null where it is mixed and not bought, or taken back meanwhile.</summary>
    public static ReorderReading? Of(ILedger ledger, Holdings holdings, string item) =>
        holdings.Item(item) is { } found && Of(ledger, holdings, PlannedDemand.Of(holdings), [found]) is [var reading]
            ? reading : null;

    private static IReadOnlyList<ReorderReading> Of(
        ILedger ledger, Holdings holdings, IEnumerable<PlannedDemand> known, IEnumerable<Item> items) =>
        ledger is IDemandRecord record ? Of(holdings, record, known, SessionSize.Of(ledger, holdings), items) : [];

    /// <summary>The readings of all items that are bought; a stock solution is mixed.</summary>
    /// <param name="holdings">What the ledger holds on the day of the reading.</param>
    /// <param name="record">What the journal remembers.</param>
    /// <param name="known">What is planned.</param>
    /// <param name="sizes">The last sessions, by which it is said for how many of them an item is enough; may be
    /// null.</param>
    public static IReadOnlyList<ReorderReading> Of(
        Holdings holdings, IDemandRecord record, IEnumerable<PlannedDemand> known,
        IReadOnlyList<SessionSize>? sizes = null) =>
        Of(holdings, record, known, sizes ?? [], holdings.Items);

    private static IReadOnlyList<ReorderReading> Of(
        Holdings holdings, IDemandRecord record, IEnumerable<PlannedDemand> known, IReadOnlyList<SessionSize> sizes,
        IEnumerable<Item> items)
    {
        var past = new PastOfItems(holdings, record);
        var planned = known.ToLookup(one => one.Item, StringComparer.OrdinalIgnoreCase);
        return [.. items.Where(item => item.StockOf is null)
            .Select(item => new ReorderReading(item, holdings, past.Of(item), [.. planned[item.Code]], sizes))];
    }

    /// <summary>
    /// The day on which an open line is expected: when nobody knows, or it is late, a lead time from today.
    /// </summary>
    public LocalDate ExpectedOn(OrderLine line) =>
        line.ExpectedOn is { } day && day >= Today ? day : Today.PlusDays(Math.Max(1, LeadTime.Days));

    private void WorkOut(Forecast forecast)
    {
        var scale = UseScale.Of(History, forecast);
        _demand = Reordering.LeadTimeDemand.Of(History, LeadTime.Possible, scale, Item.Unit.BasePerUnit());
        Computed = RoundedUp(Math.Max(_demand.Level(ServiceLevel), _perDay * LeadTime.Days));
        LeadTimeDemand = InUnits(_demand.Mean);
        SafetyStock = Computed.Value.Value - LeadTimeDemand;
        Normal = NormalLeadTimeDemand.Of(
            forecast.PerPeriod, History.Deviation, (double)LeadTime.Days / History.PeriodDays,
            LeadTime.DeviationDays / History.PeriodDays);
    }

    /// <summary>The chance with which an amount suffices until the delivery, to a thousandth, rounded down.</summary>
    internal decimal? Reaches(Quantity amount) =>
        _demand is null ? null : Math.Floor((decimal)_demand.Reached(amount.Base) * 1000) / 1000;

    /// <summary>So much in whole units: sheets, millilitres. Rounded down, the service level would be missed.</summary>
    private Quantity RoundedUp(double baseUnits)
    {
        var unit = Item.Unit.BasePerUnit();
        return Item.Of(NormalLeadTimeDemand.RoundedUp(baseUnits / unit) * unit);
    }

    /// <summary>
    /// A statistic in the item's unit, to a thousandth: use is no count, and 0.7 sheets a week are not 1.
    /// </summary>
    private decimal InUnits(double baseUnits) =>
        Math.Round((decimal)(baseUnits / Item.Unit.BasePerUnit()), 3, MidpointRounding.AwayFromZero);
}
