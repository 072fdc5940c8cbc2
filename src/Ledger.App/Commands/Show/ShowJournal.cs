using NodaTime.Text;

namespace Ledger.App.Commands.Show;

/// <summary>show journal: all that was recorded.</summary>
internal sealed class ShowJournal : ShowCommand<IReadOnlyList<JournalEntry>>
{
    private static readonly Shape<IReadOnlyList<JournalEntry>> _shape = new Shape<IReadOnlyList<JournalEntry>>()
        .AsOf()
        .Table("entries", (journal, _) => journal, new Shape<JournalEntry>()
            .Whole("entry", entry => entry.Number)
            .Text("reference", entry => entry.Key)
            .Text("kind", entry => entry.Kind)
            .Date("date", entry => entry.Date)
            .Text("recordedAt", entry => InstantPattern.ExtendedIso.Format(entry.RecordedAt))
            .Text("summary", entry => entry.Summary)
            .Text("note", entry => entry.Note)
            .Whole("undoes", entry => entry.Undoes, "the entry that it takes back")
            .Whole("undoneBy", entry => entry.UndoneBy),
            (_, rows) => rows);

    private readonly Option<LocalDate?> _day = Typed.Option(
        "--day", "DATE", Text.Date, "the entries of that day alone, in the order in which they count");

    public ShowJournal(Workbench bench)
        : base(bench, "journal", "Shows all that was recorded, the last entry first.", """
            With --day the first entry of the day comes first. Where that order is not the
            right one, put an entry before another: `record amendment 57 before=56`.
            Examples: trayledger show journal --last 20
                      trayledger show journal --kind session --from 2026-06-01
            """, _shape)
    {
        Last = new("entries", 50);
        Options.Add(Last);
        Options.Add(_day);
    }

    protected override IReadOnlyList<JournalEntry> Read(View view, ParseResult parse) => parse.GetValue(_day) is { } day
        ? view.Ledger.JournalOf(day) : view.Ledger.Journal(view.AsOf, null, AtMost(parse));

    protected override void WriteText(IReadOnlyList<JournalEntry> journal, View view, TextWriter output)
    {
        if (journal.Count == 0 && view.Ledger.Journal(view.AsOf, null, 1).Count > 0)
            output.WriteLine("Nothing that counts was recorded of that day.");
        else if (journal.Count == 0)
            output.WriteLine("The journal is empty: record something with `trayledger record`, or import it.");
        var table = new TextTable(Column.Right("entry"), Column.Left("date"), Column.Left("kind"), Column.Left("what"));
        foreach (var entry in journal)
            table.Add(Scaled.ToText(entry.Number, 0), Dates.Text(entry.Date), entry.Kind, What(entry));
        table.WriteTo(output, view.Width);
    }

    private static string What(JournalEntry entry) =>
        entry.Summary
        + (entry.UndoneBy is { } by ? $" [taken back by entry {by}]" : "")
        + (entry.Note.Length == 0 ? "" : $" ({entry.Note})");
}
