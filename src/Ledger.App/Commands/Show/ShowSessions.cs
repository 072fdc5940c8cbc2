using System.CommandLine;
using System.Text.Json;
using Ledger.App.Output;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.App.Commands.Show;

/// <summary>show sessions: what was developed.</summary>
internal sealed class ShowSessions : ShowCommand<IReadOnlyList<SessionRecord>>
{
    private readonly LastOption _last = new("sessions", 50);

    public ShowSessions(Workbench bench)
        : base(bench, "sessions", "Shows what was developed, the last session first.", """
            Example: trayledger show sessions --last 5
            """) => Options.Add(_last);

    protected override IReadOnlyList<SessionRecord> Read(View view, ParseResult parse) =>
        view.Ledger.Sessions(view.AsOf, null, _last.In(parse));

    protected override void WriteText(IReadOnlyList<SessionRecord> sessions, View view, TextWriter output)
    {
        if (sessions.Count == 0)
            output.WriteLine("No session yet: record one with `trayledger record session`.");
        var table = new TextTable(
            Column.Left("session"), Column.Left("date"), Column.Right("area"), Column.Right("developer"),
            Column.Left("bath"), Column.Left("sheets"));
        foreach (var session in sessions)
            table.Add(
                session.Session, Dates.Text(session.Date), session.Area.ToText(view.Style), session.Developer.ToText(view.Style),
                session.Bath ?? "-", Sheets(session));
        table.WriteTo(output, view.Width);
    }

    protected override void WriteJson(IReadOnlyList<SessionRecord> sessions, View view, Utf8JsonWriter json)
    {
        json.WriteDate("asOf", view.AsOf);
        json.WriteStartArray("sessions");
        foreach (var session in sessions)
        {
            json.WriteStartObject();
            json.WriteNumber("entry", session.Number);
            json.WriteString("session", session.Session);
            json.WriteDate("date", session.Date);
            json.WriteString("process", session.Process);
            json.WriteNumber("processVersion", session.ProcessVersion);
            json.WriteString("bath", session.Bath);
            json.WriteQuantity("developer", session.Developer);
            json.WriteNumber("sheets", session.Sheets);
            json.WriteArea("areaSqIn", session.Area);
            json.WriteString("note", session.Note);
            WriteLines(session, view, json);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteLines(SessionRecord session, View view, Utf8JsonWriter json)
    {
        json.WriteStartArray("lines");
        foreach (var line in session.Lines)
        {
            json.WriteStartObject();
            json.WriteString("item", line.Item);
            json.WriteNumber("sheets", line.Sheets);
            json.WriteArea("areaSqIn", line.Area);
            json.WriteMoney("cost", line.Cost, view.Currency);
            json.WriteString("group", line.Group);
            json.WriteString("fate", line.Fate.Name());
            json.WriteString("note", line.Note);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>What was developed, the same film, group and fate together.</summary>
    private static string Sheets(SessionRecord session) => string.Join(", ", session.Lines
        .GroupBy(line => (line.Item, line.Group, line.Fate))
        .Select(lines => $"{lines.Sum(line => line.Sheets)} {lines.Key.Item}{Spaced(lines.Key.Group)}{Spaced(Fate(lines.Key.Fate))}"));

    private static string Fate(Fate fate) => fate == Core.Sessions.Fate.Negative ? "" : fate.Name();

    private static string Spaced(string word) => word.Length == 0 ? "" : $" {word}";
}
