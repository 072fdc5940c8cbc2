namespace Ledger.App.Commands.Show;

/// <summary>Boxes and bottles as a table and as JSON, the same on the shelf and beside an item.</summary>
internal static class ContainerText
{
    public static TextTable Table() => new(
        Column.Left("container"), Column.Right("holds"), Column.Left("opened"), Column.Left("good until"),
        Column.Left("limited by"));

    public static void Add(TextTable table, ContainerReading reading, View view)
    {
        var container = reading.Container;
        table.Add(
            container.Code,
            container.Held.ToText(view.Style),
            container.OpenedOn is { } opened ? Dates.Text(opened) : "sealed",
            reading.GoodUntil is { } good ? Dates.Text(good.Date) : "-",
            (reading.GoodUntil?.Reason ?? "no limit set") + (reading.IsPast ? ", expired" : "")
                + (container.Suspicion is { } suspicion ? $"; {suspicion.Text}" : ""));
    }

    /// <summary>
    /// What tells containers from their like, in a table of its own: with it, one table would be wider than a page.
    /// </summary>
    public static void WriteMarks(IEnumerable<ContainerReading> readings, View view, TextWriter output)
    {
        var table = new TextTable(Column.Left("container"), Column.Left("number"), Column.Left("kept in"),
            Column.Left("exposed at"));
        foreach (var container in readings.Select(reading => reading.Container))
            if (container is { Lot.Batch.Length: > 0 } or { Storage.Length: > 0 } or { Lot.ExposureIndex: not null })
                table.Add(container.Code, container.Lot.Batch, container.Storage, container.Lot.IndexText ?? "");
        if (table.IsEmpty)
            return;
        output.WriteLine();
        table.WriteTo(output, view.Width);
    }
}
