namespace Ledger.Exchange.Print;

/// <summary>
/// Labels for the sleeves of a session's negatives: what the sheet is, when and how it was developed.
/// </summary>
public static class SleeveLabels
{
    /// <summary>
    /// A label for each negative of a session; rejects, tests, practice sheets and dummies have none.
    /// </summary>
    /// <param name="session">The session.</param>
    /// <param name="sheets">Its sheets with the numbers they are filed under; a roll has none and is labelled by its
    /// place in the session.</param>
    /// <param name="holdings">What the ledger holds, for the names of the films.</param>
    public static IReadOnlyList<Label> Of(SessionRecord session, IEnumerable<SheetFate> sheets, Holdings holdings)
    {
        var known = sheets.ToDictionary(sheet => sheet.Position);
        var labels = new List<Label>();
        var position = 0L;
        foreach (var line in session.Lines.Where(line => line.Fate != Fate.Dummy))
            for (var sheet = 0; sheet < line.Sheets; sheet++)
            {
                position++;
                if (line.Fate.IsNegative())
                    labels.Add(Of(session, line, position, known.GetValueOrDefault(position), holdings));
            }

        return labels;
    }

    /// <summary>A page of labels.</summary>
    public static PrintedPage Page(IReadOnlyList<Label> labels, LabelSheet sheet) =>
        new("Negative sleeves", [new Labels(labels, sheet)]);

    private static Label Of(SessionRecord session, SessionSheets line, long position, SheetFate? sheet,
        Holdings holdings) => new(
        sheet?.Negative ?? $"{session.Session}-{position:00}",
        [
            $"{holdings.Item(line.Item)?.Name ?? line.Item}{(line.Group.Length > 0 ? $", {line.Group}" : "")}",
            sheet?.Subject ?? "",
            $"{Dates.Text(session.Date)}, {session.Session}, {Process.NameOf(session.Process, session.ProcessVersion)}",
            line.Note,
            (sheet?.Fate ?? line.Fate) == Fate.Keeper ? "keeper" : "",
        ],
        []);
}
