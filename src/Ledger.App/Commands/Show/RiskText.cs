namespace Ledger.App.Commands.Show;

/// <summary>What shares a fault, as a person reads it.</summary>
internal static class RiskText
{
    public static void Write(RiskReading risk, View view, TextWriter output)
    {
        output.WriteProse(
            $"{risk.Name}{(risk.By is { } by ? $", at fault by {Dates.Text(by)}" : "")}: "
            + (risk.Sheets.Count == 0 ? "no sheet shares it"
                : $"{(risk.Sheets.Count == 1 ? "1 sheet shares" : $"{risk.Sheets.Count} sheets share")} it, worst "
                    + "first; "
                    + string.Join(", ", risk.Levels.Select(level => $"{level.Sheets} {level.Level.Name()}"))),
            view.Width);
        if (risk.Things.Count > 0)
        {
            output.WriteLine();
            var things = new TextTable(Column.Left("  what"), Column.Left(""), Column.Left("what to do"));
            foreach (var thing in risk.Things)
                things.Add($"  {thing.Name}", thing.Text, thing.ToDo);
            things.WriteTo(output, view.Width);
        }

        foreach (var level in risk.Sheets.GroupBy(sheet => sheet.Level))
        {
            output.WriteLine();
            output.WriteLine(level.Key.Name());
            foreach (var alike in level.GroupBy(sheet =>
                (sheet.Reason, sheet.ToDo, sheet.Card.Session, sheet.Card.Batch)))
                Write([.. alike], view, output);
        }

        if (risk.Sheets.Any(sheet => sheet.IsFirst))
        {
            output.WriteLine();
            output.WriteProse(
                "* first: one of each batch tells of the others. `record sheet-note` keeps what is found.", view.Width);
        }
    }

    /// <summary>Sheets of one batch for one reason.</summary>
    private static void Write(IReadOnlyList<SheetAtRisk> alike, View view, TextWriter output)
    {
        var batch = alike[0].Card is { Session: { } session, Batch: { } number } ? $"{session} batch {number}: " : "";
        output.WriteProse($"{batch}{alike[0].Reason}. What to do: {alike[0].ToDo}.", view.Width);
        var table = new TextTable(Column.Left("    sheet"), Column.Left("date"), Column.Left("fate"),
            Column.Left("where"), Column.Left("subject"));
        foreach (var sheet in alike)
            table.Add(
                $"  {(sheet.IsFirst ? "* " : "  ")}{sheet.Card.Name}", TraceText.Day(sheet.Card), sheet.Card.FateText,
                    sheet.Card.Where, sheet.Card.Subject);
        table.WriteTo(output, view.Width);
    }
}
