using Ledger.Core.Journal.Entries;
using Ledger.Core.Sessions;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>
/// plans.csv: sessions and trips that are planned. The rows of one plan make one entry; its dates, process and bath stand in one of them at
/// least. "date" is the day on which it was planned, "on" the day it is planned for.
/// </summary>
internal sealed class PlansFile() : FileKind(
    "plans",
    ["plan", "date", "on", "item", "sheets"],
    ["what", "process", "group", "subject", "holder", "from", "minutes", "bath", "note"])
{
    private static readonly string[] Whats = ["session", "trip"];

    public override IEnumerable<SourcedEntry> Entries(IEnumerable<Row> rows, ImportTerms terms)
    {
        var keys = new RowKeys(Name, Columns);
        foreach (var plan in RowGroup.By("plan", rows))
        {
            var entry = new PlannedSession
            {
                Key = keys.Of(plan.Name, plan.Rows),
                Plan = plan.Name,
                Date = plan.Saying("date").Date("date"),
                On = plan.Saying("on").Date("on"),
                IsTrip = plan.Saying("what").Choice("what", Whats) == 1,
                Note = plan.Saying("note").Text("note"),
                Request = new()
                {
                    Process = plan.Saying("process").Text("process"),
                    Times = plan.Saying("minutes").Read("minutes", GroupTimes.Read, GroupTimes.Accepted) ?? GroupTimes.None,
                    Bath = plan.Saying("bath").TextOrNull("bath"),
                    Sheets = [.. plan.Rows.Select(Line)],
                },
            };
            if (plan.IsGood)
                yield return new(plan.Line, entry);
        }
    }

    private static RequestedSheets Line(Row row) => new()
    {
        Film = row.Needed("item", "accepted is the code of a film"),
        Count = row.Needed("sheets", row.Whole("sheets")),
        Group = row.Text("group"),
        Subject = row.Text("subject"),
        Holder = row.Text("holder"),
        From = row.TextOrNull("from"),
    };
}
