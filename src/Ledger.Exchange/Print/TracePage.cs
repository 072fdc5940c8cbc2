namespace Ledger.Exchange.Print;

/// <summary>A trace on paper: what something came through, and what else came through that.</summary>
public static class TracePage
{
    /// <summary>The page of a trace.</summary>
    /// <param name="trace">The trace.</param>
    /// <param name="style">The units of the user.</param>
    public static PrintedPage Of(TraceReading trace, MeasureStyle style) => new(
        $"Trace of {trace.Card?.Name ?? trace.Name}",
        [
            new Points([.. trace.Card is { } card ? [Line(card)] : trace.StartLabels.Select(label =>
                $"{label.Name}: {label.Text}{(label.Date is { } date ? $", {Dates.Text(date)}" : "")}")]),
            .. trace.Back.Count == 0 ? [] : new PageBlock[]
            {
                new Heading("Back: what it came through"),
                new Points([.. trace.Back.Select(step => Row(step, style, trace.Card is not null))]),
            },
            .. trace.Card is null
                ? [new Heading($"Forward: sheets that came through it ({trace.Sheets.Count})"),
                    Sheets(trace.Sheets.Select(sheet => sheet.Card))]
                : Shared(trace),
            .. trace.Things.Count == 0 ? [] : new PageBlock[]
            {
                new Heading(trace.Card is null ? "And beside the sheets" : "And it came to"),
                new Grid(["date", "what", ""], [.. trace.Things.Select(thing => (IReadOnlyList<string>)
                    [thing.On is { } on ? Dates.Text(on) : "", thing.Label.Name, thing.Label.Text])]),
            },
        ]);

    /// <summary>Sheets with the number inked on them, the day, the subject, what became of them, and where they
    /// are.</summary>
    public static Grid Sheets(IEnumerable<SheetCard> cards) => new(
        ["sheet", "date", "film", "subject", "fate", "where"],
        [.. cards.Select(card => (IReadOnlyList<string>)[card.Name, card.Date is { } date ? Dates.Text(date) : "",
            card.Item, card.Subject, card.FateText, card.Where])]);

    /// <summary>A list of sheets on paper: what a search found.</summary>
    /// <param name="title">What was looked for, in words.</param>
    /// <param name="cards">What was found.</param>
    public static PrintedPage Of(string title, IReadOnlyList<SheetCard> cards) => new(
        title, [new Paragraph(Counted.Of(cards.Count, "sheet")), Sheets(cards)]);

    private static IEnumerable<PageBlock> Shared(TraceReading trace)
    {
        yield return new Heading("Forward: in the trays together with it");
        yield return trace.Mates.Count == 0 ? new Paragraph("No other sheet.") : Sheets(trace.Mates);
        foreach (var (bath, since) in trace.BathMates)
        {
            yield return new Heading($"Through {bath.Label.Name} since, in later sessions ({since.Count})");
            yield return since.Count == 0 ? new Paragraph("No other sheet.") : Sheets(since);
        }
    }

    private static string Line(SheetCard card) =>
        $"{card.Name}: a sheet of {card.Item}{(card.Subject.Length > 0 ? $", {card.Subject}" : "")}; "
            + $"{card.FateText}, in {card.Where}";

    private static string Row(TraceStep step, MeasureStyle style, bool isSheet) =>
        $"{(step.On is { } on ? $"{Dates.Text(on)} " : "")}{step.Label.Name}: {step.Label.Text}"
        + (step.Bath is { } bath ? $": {bath.Text(style)}" : "") + (step.IsShared ? "; by way of a bath or a box" : "")
        + (isSheet ? $" ({step.Others})" : "");
}
