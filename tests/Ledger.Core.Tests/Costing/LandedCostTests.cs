namespace Ledger.Core.Tests.Costing;

public sealed class LandedCostTests
{
    private const string Deliveries = """
        price | packs | discount | shipping | duty  | rate   | landed
        162   | 2     | 0        | 14.50    | 0     | 1      | 338.50
        71    | 1     | 0        | 22       | 18.40 | 1      | 111.40
        100   | 3     | 15       | 12       | 6     | 1      | 303
        50    | 0.5   | 0        | 0        | 0     | 1      | 25
        100   | 1     | 0        | 10       | 5     | 0.923  | 106.145
        0.01  | 1     | 0        | 0        | 0     | 0.3333 | 0.003333
        0     | 4     | 0        | 0        | 0     | 1      | 0
        """;

    [Fact]
    public void It_is_price_less_discount_with_shipping_and_duty_at_the_days_rate() =>
        Assert.All(Table.Read(Deliveries), row =>
            Assert.Equal(
                Money.Of(row.Number("landed")),
                new LandedCost(
                    Money.Of(row.Number("price")), row.Number("packs"), Money.Of(row.Number("discount")),
                    Money.Of(row.Number("shipping")), Money.Of(row.Number("duty")), row.Number("rate")).Total));
}
