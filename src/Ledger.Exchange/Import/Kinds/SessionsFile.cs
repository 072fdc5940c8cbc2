using Ledger.Core.Film;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>
/// sessions.csv: what was developed. The rows of one session make one entry; its date, process and bath stand in one of them at least.
/// </summary>
internal sealed class SessionsFile() : FileKind(
    "sessions",
    ["session", "date", "process", "item", "sheets"],
    ["group", "developer_ml", "bath", "fate", "container", "from", "cause", "anyway", "note", "plan", "developer_g"])
{
    public override IEnumerable<SourcedEntry> Entries(IEnumerable<Row> rows, ImportTerms terms)
    {
        foreach (var session in RowGroup.By("session", rows))
        {
            var entry = new SessionLog
            {
                Key = $"{Name}:{session.Name}",
                Session = session.Name,
                Date = session.Saying("date").Date("date"),
                Process = session.Saying("process").Needed("process", "accepted is the name of a process"),
                Bath = session.Saying("bath").TextOrNull("bath"),
                Plan = session.Saying("plan").TextOrNull("plan"),
                Anyway = session.Saying("anyway").IsYes("anyway"),
                Lines = [.. session.Rows.Select(Line)],
            };
            if (session.IsGood)
                yield return new(session.Line, entry);
        }
    }

    private static SessionLine Line(Row row) => new()
    {
        Item = row.Needed("item", "accepted is the code of a film"),
        Sheets = row.Needed("sheets", row.Whole("sheets")),
        Group = row.Text("group"),
        Developer = row.Volume("developer_ml"),
        DeveloperWeight = row.Quantity("developer_g", Unit.Gram),
        Fate = (Fate)row.Choice("fate", Fates.Names),
        Container = row.TextOrNull("container"),
        From = row.TextOrNull("from"),
        Cause = row.TextOrNull("cause") is null ? null : (RejectCause)row.Choice("cause", RejectCauses.Names),
        Note = row.Text("note"),
    };
}
