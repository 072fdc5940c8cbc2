namespace Ledger.Core.Tests.Reordering;

/// <summary>A film of which 50 sheets came in two boxes, with a past of the test's own.</summary>
internal static class Fen80
{
    /// <summary>Forty weeks.</summary>
    public static readonly long[] FourEverySecondWeek =
        [.. Enumerable.Range(0, 40).Select(week => week % 2 == 1 ? 4L : 0)];

    public static ReorderReading Read(
        long[] uses, Action<InMemoryLedger>? more = null, long? minimum = null, LocalDate? expires = null,
        KeepingLimits? keeping = null, IReadOnlyList<PlannedDemand>? known = null, int leadDays = 14)
    {
        var ledger = Stocked(minimum, expires, keeping, more ?? (_ => { }), leadDays);
        return ReorderReading.Of(ledger.Holdings, new Uses(uses), known ?? []).Single();
    }

    public static InMemoryLedger Stocked(long? minimum, LocalDate? expires, KeepingLimits? keeping,
        Action<InMemoryLedger> more, int leadDays = 14)
    {
        var ledger = new InMemoryLedger();
        ledger.Post(Some.Definition(Some.Film() with
        {
            LeadTimeDays = leadDays, ServiceLevel = 0.95m, MinimumOnHand = minimum is { } least ? Sheets(least) : null,
            Keeping = keeping ?? KeepingLimits.None,
        }));
        ledger.Post(
            "delivery item=fen80 packs=2 price=162 "
                + $"date=2026-01-10{(expires is { } day ? $" expires={Dates.Text(day)}" : "")}");
        more(ledger);
        return ledger;
    }

    public static OrderTermsSetting Terms(OrderTerms terms) =>
        new() { Key = Some.Key(), Date = Some.Today, Terms = terms };

    public static PlannedDemand Planned(int days, long sheets) =>
        new("fen80", Some.Today.PlusDays(days), Sheets(sheets), days > 30 ? "north" : "soon");

    public static Quantity Sheets(long sheets) => new(sheets, Unit.Sheet);

    /// <summary>A past of fen80 alone.</summary>
    public sealed class Uses(long[] uses) : IDemandRecord
    {
        public IReadOnlyList<DemandSeries> Demand(LocalDate asOf, int periodDays) =>
            [new("fen80", periodDays, asOf, uses)];

        public IReadOnlyList<DeliveryTime> DeliveryTimes(LocalDate asOf) => [];

        public IReadOnlyList<LastPrice> LastPrices(LocalDate asOf) => [new("fen80", Some.Earlier, Money.Of(162))];
    }
}
