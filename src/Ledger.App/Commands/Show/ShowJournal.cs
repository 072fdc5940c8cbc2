using System.CommandLine;
using System.Text.Json;
using Ledger.App.Output;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Measures;
using NodaTime.Text;

namespace Ledger.App.Commands.Show;

/// <summary>show journal: all that was recorded.</summary>
internal sealed class ShowJournal : ShowCommand<IReadOnlyList<JournalEntry>>
{
    private readonly LastOption _last = new("entries", 50);

    public ShowJournal(Workbench bench)
        : base(bench, "journal", "Shows all that was recorded, the last entry first.") => Options.Add(_last);

    protected override IReadOnlyList<JournalEntry> Read(View view, ParseResult parse) =>
        view.Ledger.Journal(view.AsOf, null, _last.In(parse));

    protected override void WriteText(IReadOnlyList<JournalEntry> journal, View view, TextWriter output)
    {
        if (journal.Count == 0)
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
