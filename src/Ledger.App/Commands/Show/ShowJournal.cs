using System.CommandLine;
using System.Text.Json;
using Ledger.App.Output;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Measures;
using NodaTime;
using NodaTime.Text;

namespace Ledger.App.Commands.Show;

/// <summary>show journal: all that was recorded.</summary>
internal sealed class ShowJournal : ShowCommand<IReadOnlyList<JournalEntry>>
{
    private readonly LastOption _last = new("entries", 50);
    private readonly Option<LocalDate?> _day = Typed.Option(
        "--day", "DATE", Text.Date, "the entries of that day alone, in the order in which they count");

    public ShowJournal(Workbench bench)
        : base(bench, "journal", "Shows all that was recorded, the last entry first.", """
            With --day the first entry of the day comes first. Where that order is not the
            right one, put an entry before another: `record amendment 57 before=56`.
            Example: trayledger show journal --last 20
            """)
    {
        Options.Add(_last);
        Options.Add(_day);
    }

    protected override IReadOnlyList<JournalEntry> Read(View view, ParseResult parse) => parse.GetValue(_day) is { } day
        ? view.Ledger.JournalOf(day) : view.Ledger.Journal(view.AsOf, null, _last.In(parse));

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

    protected override void WriteJson(IReadOnlyList<JournalEntry> journal, View view, Utf8JsonWriter json)
    {
        json.WriteDate("asOf", view.AsOf);
        json.WriteStartArray("entries");
        foreach (var entry in journal)
        {
            json.WriteStartObject();
            json.WriteNumber("entry", entry.Number);
            json.WriteString("reference", entry.Key);
            json.WriteString("kind", entry.Kind);
            json.WriteDate("date", entry.Date);
            json.WriteString("recordedAt", InstantPattern.ExtendedIso.Format(entry.RecordedAt));
            json.WriteString("summary", entry.Summary);
            json.WriteString("note", entry.Note);
            json.WriteFigure("undoes", entry.Undoes);
            json.WriteFigure("undoneBy", entry.UndoneBy);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static string What(JournalEntry entry) =>
        entry.Summary
        + (entry.UndoneBy is { } by ? $" [taken back by entry {by}]" : "")
        + (entry.Note.Length == 0 ? "" : $" ({entry.Note})");
}
