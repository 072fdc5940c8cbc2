namespace Ledger.Storage.Writing;

/// <summary>Writes orders, what the supplier says about them, deliveries, price rises and order terms.</summary>
internal sealed class OrderFactWriter(SqliteConnection connection, long entry)
{
    public void Write(OrderPlaced placed)
    {
        var order = placed.Order;
        connection.Execute(
            "INSERT INTO purchase_order (entry_id, code, supplier, prepaid) VALUES (@entry, @Code, @Supplier, "
                + "@Prepaid)",
            new { entry, order.Code, order.Supplier, Prepaid = order.IsPrepaid ? 1 : 0 });
        for (var i = 0; i < order.Lines.Count; i++)
            Write(order.Lines[i], i + 1);
    }

    public void Write(OrderLineChanged changed) => connection.Execute(
        """
        INSERT INTO order_line_change (entry_id, order_id, item_id, expected_on, back_ordered, cancelled, packs,
            quantity, price)
        SELECT @entry, o.entry_id, i.id, @ExpectedOn, @BackOrdered, @Cancelled, @Packs, @Quantity, @Price
        FROM purchase_order o JOIN standing_entry e ON e.id = o.entry_id JOIN item i ON i.code = @Item
            WHERE o.code = @Order
        """,
        new
        {
            entry, changed.Order, changed.Item, ExpectedOn = TextOf(changed.ExpectedOn),
            BackOrdered = changed.IsBackOrdered is { } isBackOrdered ? isBackOrdered ? 1 : 0 : (int?)null,
            Cancelled = changed.IsCancelled ? 1 : 0, changed.Ordered?.Packs, Quantity = changed.Ordered?.Hold.Base,
            Price = changed.Price?.Millionths,
        });

    public void Write(OrderDelivered delivered) => connection.Execute(
        """
        INSERT INTO order_delivery (entry_id, order_id, item_id, quantity)
        SELECT @entry, o.entry_id, i.id, @Quantity
        FROM purchase_order o JOIN standing_entry e ON e.id = o.entry_id JOIN item i ON i.code = @Item
            WHERE o.code = @Order
        """,
        new { entry, delivered.Order, delivered.Item, Quantity = delivered.Quantity.Base });

    public void Write(PriceRise rise) => connection.Execute(
        """
        INSERT INTO price_rise (entry_id, item_id, starts_on, thousandths)
        VALUES (@entry, (SELECT id FROM item WHERE code = @Item), @StartsOn, @Thousandths)
        """,
        new { entry, rise.Item, StartsOn = Dates.Text(rise.From), rise.Thousandths });

    public void Write(OrderTerms terms) => connection.Execute(
        """
        INSERT INTO order_terms (entry_id, item_id, cover_days, window_opens, window_closes, order_cost,
            holding_thousandths)
        VALUES (@entry, (SELECT id FROM item WHERE code = @Item), @CoverDays, @Opens, @Closes, @OrderCost,
            @HoldingThousandths)
        """,
        new
        {
            entry, terms.Item, terms.CoverDays, Opens = TextOf(terms.WindowOpens), Closes = TextOf(terms.WindowCloses),
            OrderCost = terms.OrderCost?.Millionths, terms.HoldingThousandths,
        });

    private void Write(OrderLine line, int number) => connection.Execute(
        """
        INSERT INTO order_line (order_id, item_id, number, packs, quantity, price, expected_on, back_ordered)
        VALUES (@entry, (SELECT id FROM item WHERE code = @Item), @number, @Packs, @Quantity, @Price, @ExpectedOn,
            @BackOrdered)
        """,
        new
        {
            entry, line.Item, number, line.Packs, Quantity = line.Ordered.Base, Price = line.Price.Millionths,
            ExpectedOn = TextOf(line.ExpectedOn), BackOrdered = line.IsBackOrdered ? 1 : 0,
        });

    private static string? TextOf(LocalDate? day) => day is { } known ? Dates.Text(known) : null;

    private static string? TextOf(AnnualDate? day) => day is { } known ? Dates.Text(known) : null;
}
