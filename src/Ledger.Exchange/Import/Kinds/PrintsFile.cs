using Ledger.Core.Journal.Entries;
using Ledger.Core.Sessions;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>
/// prints.csv: sessions of printing; a session has a row for each paper and purpose. Strips count by their share of a sheet.
/// </summary>
internal sealed class PrintsFile() : FileKind(
    "prints", ["session", "date", "item"], ["sheets", "strips", "strips_per_sheet", "purpose", "bath", "container", "note"])
{
    public override IEnumerable<SourcedEntry> Entries(IEnumerable<Row> rows, ImportTerms terms)
    {
        var keys = new RowKeys(Name, Columns);
        foreach (var session in RowGroup.By("session", rows))
        {
            var lines = session.Rows.Select(Line).ToList();
            var (key, date) = (keys.Of(session.Name, session.Rows), session.Saying("date").Date("date"));
            var bath = session.Saying("bath").TextOrNull("bath");
            if (session.IsGood)
                yield return new(
                    session.Line, new PrintSession { Key = key, Date = date, Session = session.Name, Lines = lines, Bath = bath });
        }
    }

    private static PrintLine Line(Row row) => new()
    {
        Item = row.Needed("item", "accepted is the code of a paper"),
        Sheets = row.Whole("sheets") ?? 0,
        Strips = row.Whole("strips") ?? 0,
        StripsPerSheet = row.Whole("strips_per_sheet") ?? 4,
        Purpose = (PrintPurpose)row.Choice("purpose", PrintPurposes.Names),
        Container = row.TextOrNull("container"),
        Note = row.Text("note"),
    };
}
