using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Exchange.Print;

/// <summary>Labels for the sleeves of a session's negatives: what the sheet is, when and how it was developed.</summary>
public static class SleeveLabels
{
    /// <summary>A label for each negative of a session; rejects, tests and practice sheets have none.</summary>
    public static IReadOnlyList<Label> Of(SessionRecord session, Holdings holdings)
    {
        var labels = new List<Label>();
        var number = 0;
        foreach (var line in session.Lines)
            for (var sheet = 0; sheet < line.Sheets; sheet++)
            {
                number++;
                if (line.Fate.IsNegative())
                    labels.Add(new(
                        $"{session.Session}-{number:00}",
                        [
                            $"{holdings.Item(line.Item)?.Name ?? line.Item}{(line.Group.Length > 0 ? $", {line.Group}" : "")}",
                            $"{Dates.Text(session.Date)}, {Process.NameOf(session.Process, session.ProcessVersion)}",
                            line.Note,
                            line.Fate == Fate.Keeper ? "keeper" : "",
                        ],
                        []));
            }

        return labels;
    }

    /// <summary>A page of labels.</summary>
    public static PrintedPage Page(IReadOnlyList<Label> labels, LabelSheet sheet) => new("Negative sleeves", [new Labels(labels, sheet)]);
}
