namespace Ledger.App.Commands.Show;

/// <summary>A trace as a person reads it.</summary>
internal static class TraceText
{
    public static void Write(TraceReading trace, View view, TextWriter output)
    {
        foreach (var sentence in Heading(trace))
            output.WriteProse(sentence, view.Width);
        WriteBack(trace, view, output);
        if (trace.Card is not null)
            WriteShared(trace, view, output);
        else
            WriteForward(trace, view, output);
        WriteThings(trace, output, view);
    }

    /// <summary>The sheets as a table: by the number inked on them, with the day, the subject, and where they
    /// are.</summary>
    public static void WriteSheets(IEnumerable<SheetCard> cards, View view, TextWriter output)
    {
        var table = new TextTable(Column.Left("  sheet"), Column.Left("date"), Column.Left("fate"),
            Column.Left("where"), Column.Left("subject"));
        foreach (var card in cards)
            table.Add($"  {card.Name}", Day(card), card.FateText, card.Where, card.Subject);
        table.WriteTo(output, view.Width);
    }

    public static string Day(SheetCard card) => card.Date is { } date ? Dates.Text(date) : "-";

    private static IEnumerable<string> Heading(TraceReading trace)
    {
        if (trace.Card is { } card)
        {
            yield return $"{card.Name}: a sheet of {card.Item}{(card.Subject.Length > 0 ? $", {card.Subject}" : "")}, "
                + $"{Day(card)}; {card.FateText}, in {card.Where}";
            yield break;
        }

        foreach (var label in trace.StartLabels)
            yield return $"{label.Name}: {label.Text}{(label.Date is { } date ? $", {Dates.Text(date)}" : "")}";
    }

    private static void WriteBack(TraceReading trace, View view, TextWriter output)
    {
        if (trace.Back.Count == 0)
            return;
        output.WriteLine();
        output.WriteLine("back: what it came through");
        var isSheet = trace.Card is not null;
        var table = new TextTable([Column.Left("  date"), Column.Left("what"), .. isSheet ? [Column.Right("shared by")]
            : Array.Empty<Column>(), Column.Left("")]);
        foreach (var step in trace.Back)
            table.Add([
                $"  {(step.On is { } on ? Dates.Text(on) : "-")}", step.Label.Name,
                .. isSheet ? [step.Others] : Array.Empty<string>(),
                step.Label.Text + (step.Bath is { } bath ? $": {bath.Text(view.Style)}" : "")
                    + (step.IsShared ? "; by way of a bath or a box" : ""),
            ]);
        table.WriteTo(output, view.Width);
    }

    private static void WriteShared(TraceReading trace, View view, TextWriter output)
    {
        output.WriteLine();
        if (trace.Mates.Count > 0)
        {
            output.WriteLine("forward: in the trays together with it");
            WriteSheets(trace.Mates, view, output);
        }
        else
            output.WriteLine("forward: no other sheet lay in the trays with it");
        foreach (var (bath, since) in trace.BathMates)
        {
            output.WriteLine();
            output.WriteLine(since.Count == 0 ? $"nothing has gone through {bath.Label.Name} since"
                : $"through {bath.Label.Name} since, in later sessions");
            WriteSheets(since, view, output);
        }
    }

    private static void WriteForward(TraceReading trace, View view, TextWriter output)
    {
        output.WriteLine();
        output.WriteLine(
            $"forward: {(trace.Sheets.Count == 0 ? "no sheet" : Counted.Of(trace.Sheets.Count, "sheet"))} came through "
                + "it");
        var table = new TextTable(
            Column.Left("  sheet"), Column.Left("date"), Column.Left("fate"), Column.Left("where"),
                Column.Left("through"), Column.Left("subject"));
        foreach (var sheet in trace.Sheets)
            table.Add(
                $"  {sheet.Card.Name}", sheet.On is { } on ? Dates.Text(on) : "-", sheet.Card.FateText,
                    sheet.Card.Where,
                string.Join(", ", sheet.Through.Take(2)) + (sheet.IsShared ? ", shared" : ""), sheet.Card.Subject);
        table.WriteTo(output, view.Width);
    }

    private static void WriteThings(TraceReading trace, TextWriter output, View view)
    {
        if (trace.Things.Count == 0)
            return;
        output.WriteLine();
        output.WriteLine(trace.Card is null ? "and beside the sheets" : "and it came to");
        var things = new TextTable(Column.Left("  date"), Column.Left("what"), Column.Left(""));
        foreach (var thing in trace.Things)
            things.Add($"  {(thing.On is { } on ? Dates.Text(on) : "-")}", thing.Label.Name, thing.Label.Text
                + (thing.IsShared ? "; by way of a bath or a box" : ""));
        things.WriteTo(output, view.Width);
    }
}
