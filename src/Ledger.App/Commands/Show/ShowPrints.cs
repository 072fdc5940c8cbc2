using System.CommandLine;
using System.Text.Json;
using Ledger.App.Output;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.App.Commands.Show;

/// <summary>show prints: what was printed.</summary>
internal sealed class ShowPrints : ShowCommand<IReadOnlyList<PrintRecord>>
{
    private readonly LastOption _last = new("print sessions", 50);

    public ShowPrints(Workbench bench)
        : base(bench, "prints", "Shows what was printed, the last print session first.", """
            Example: trayledger show prints --last 5
            """) => Options.Add(_last);

    protected override IReadOnlyList<PrintRecord> Read(View view, ParseResult parse) => view.Ledger.Prints(view.AsOf, null, _last.In(parse));

    protected override void WriteText(IReadOnlyList<PrintRecord> prints, View view, TextWriter output)
    {
        if (prints.Count == 0)
            output.WriteLine("No print session yet: record one with `trayledger record print-session`.");
        var table = new TextTable(
            Column.Left("session"), Column.Left("date"), Column.Right("area"), Column.Right("paper"), Column.Left("bath"),
            Column.Left("what"), Column.Left("of"));
        foreach (var print in prints)
            table.Add(
                print.Session, Dates.Text(print.Date), print.Area.ToText(view.Style), print.Cost.Text(view.Style), print.Bath ?? "-",
                string.Join(", ", print.Lines.Select(What)), string.Join(", ", print.Negatives));
        table.WriteTo(output, view.Width);
    }

    protected override void WriteJson(IReadOnlyList<PrintRecord> prints, View view, Utf8JsonWriter json)
    {
        json.WriteDate("asOf", view.AsOf);
        json.WriteStartArray("prints");
        foreach (var print in prints)
        {
            json.WriteStartObject();
            json.WriteNumber("entry", print.Number);
            json.WriteString("session", print.Session);
            json.WriteDate("date", print.Date);
            json.WriteString("bath", print.Bath);
            json.WriteStartArray("negatives");
            foreach (var negative in print.Negatives)
                json.WriteStringValue(negative);
            json.WriteEndArray();
            json.WriteNumber("sheets", print.Sheets);
            json.WriteArea("areaSqIn", print.Area);
            json.WriteMoney("cost", print.Cost, view.Currency);
            json.WriteString("note", print.Note);
            WriteLines(print, view, json);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteLines(PrintRecord print, View view, Utf8JsonWriter json)
    {
        json.WriteStartArray("lines");
        foreach (var line in print.Lines)
        {
            json.WriteStartObject();
            json.WriteString("item", line.Item);
            json.WriteNumber("sheets", line.Sheets);
            json.WriteNumber("strips", line.Strips);
            json.WriteArea("areaSqIn", line.Area);
            json.WriteMoney("cost", line.Cost, view.Currency);
            json.WriteString("purpose", line.Purpose.Name());
            json.WriteString("note", line.Note);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static string What(PrintedPaper line) => line.Purpose == PrintPurpose.Strip
        ? $"{line.Strips} {line.Item} {Counted.Noun(line.Strips, "strip")}"
        : $"{line.Sheets} {line.Item} {line.Purpose.Name()}";
}
