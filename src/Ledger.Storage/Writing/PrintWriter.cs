namespace Ledger.Storage.Writing;

/// <summary>Writes print sessions.</summary>
internal sealed class PrintWriter(SqliteConnection connection, long entry)
{
    public void Write(PrintSessionHeld held) => connection.Execute(
        "INSERT INTO print_session (entry_id, code, bath_id) VALUES (@entry, @Session, @Bath)",
        new { entry, held.Session, Bath = held.Bath?.Value });

    public void Write(NegativePrinted printed) => connection.Execute(
        "INSERT INTO print_negative (entry_id, position, sheet_id) VALUES (@entry, @Position, @Sheet)",
        new { entry, printed.Position, Sheet = printed.Sheet.Value });

    public void Write(PaperPrinted printed) => connection.Execute(
        """
        INSERT INTO print_sheets (entry_id, number, item_id, sheets, strips, area, cost, purpose, note)
        VALUES (@entry, @Line, (SELECT id FROM item WHERE code = @Item), @Sheets, @Strips, @Area, @Cost, @Purpose,
            @Note)
        """,
        new
        {
            entry, printed.Line, printed.Item, printed.Sheets, printed.Strips, Area = printed.Area.Hundredths,
            Cost = printed.Cost.Millionths, Purpose = printed.Purpose.Name(), printed.Note,
        });
}
