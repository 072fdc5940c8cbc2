namespace Ledger.Exchange.Print;

/// <summary>A list to work off a fault with a pencil: what to keep apart, which sheets to test first, and a line for
/// each sheet's result.</summary>
public static class CheckList
{
    /// <summary>The list of a fault.</summary>
    /// <param name="risk">What shares it.</param>
    public static PrintedPage Of(RiskReading risk)
    {
        var open = risk.Sheets.Where(sheet => sheet.Level < RiskLevel.ProvedSince).ToList();
        return new(
            $"Check list: {risk.Name}{(risk.By is { } by ? $", at fault by {Dates.Text(by)}" : "")}",
            [
                new Paragraph(risk.Sheets.Count == 0 ? "No sheet shares it."
                    : $"{Counted.Of(risk.Sheets.Count, "sheet")} share it: "
                        + string.Join(", ", risk.Levels.Select(level => $"{level.Sheets} {level.Level.Name()}")) + "."),
                .. risk.Things.Count == 0 ? [] : new PageBlock[]
                {
                    new Heading("Keep apart"), new Ticks(
                        [.. risk.Things.Select(thing =>
                        $"{thing.Name}, {thing.Text}: {thing.ToDo.Replace("`", "", StringComparison.Ordinal)}")]),
                },
                .. open.Any(sheet => sheet.IsFirst) ?
                [
                    new Heading("First, one of each batch"),
                    new Ticks([.. open.Where(sheet => sheet.IsFirst)
                        .Select(sheet => $"{sheet.Card.Name} in {sheet.Card.Where}: {sheet.ToDo}")]),
                ] : Array.Empty<PageBlock>(),
                .. open.GroupBy(sheet => sheet.Level).SelectMany(level =>
                    level.GroupBy(sheet => (sheet.Reason, sheet.Card.Session, sheet.Card.Batch))
                    .SelectMany(alike => Alike([.. alike]))
                    .Prepend(new Heading($"{char.ToUpperInvariant(level.Key.Name()[0])}{level.Key.Name()[1..]}"))),
                new Paragraph(
                    "Record what is found, sheet by sheet: trayledger record sheet-note SHEET "
                    + "--what \"residual silver test\" --result ... --passed yes or no."),
                new Points([.. UsualCautions.Sentences, UsualCautions.Governs], AreCautions: true),
            ]);
    }

    /// <summary>The sheets of one batch at risk for one reason, with room for what is found.</summary>
    private static IEnumerable<PageBlock> Alike(IReadOnlyList<SheetAtRisk> sheets)
    {
        var batch = sheets[0].Card is { Session: { } session, Batch: { } number } ? $"{session} batch {number}: " : "";
        yield return new Paragraph($"{batch}{sheets[0].Reason}. What to do: {sheets[0].ToDo}.");
        yield return new Grid(
            ["sheet", "date", "subject", "where", "test", "refixed", "rewashed"],
            [.. sheets.Select(sheet => (IReadOnlyList<string>)
            [
                sheet.Card.Name, sheet.Card.Date is { } date ? Dates.Text(date) : "", sheet.Card.Subject,
                    sheet.Card.Where, "____", "____", "____",
            ])]);
    }
}
