namespace Ledger.App.Commands.Show;

/// <summary>show sessions: what was developed.</summary>
internal sealed class ShowSessions : ShowCommand<IReadOnlyList<SessionRecord>>
{
    private static readonly Shape<IReadOnlyList<SessionRecord>> _shape = new Shape<IReadOnlyList<SessionRecord>>()
        .AsOf().Table("sessions", (sessions, _) => sessions, SessionShape.Of, (_, rows) => rows);

    public ShowSessions(Workbench bench)
        : base(bench, "sessions", "Shows what was developed, the last session first.", """
            Example: trayledger show sessions --last 5
            """, _shape)
    {
        Last = new("sessions", 50);
        Options.Add(Last);
    }

    protected override IReadOnlyList<SessionRecord> Read(View view, ParseResult parse) =>
        view.Ledger.Sessions(view.AsOf, null, AtMost(parse));

    protected override void WriteText(IReadOnlyList<SessionRecord> sessions, View view, TextWriter output)
    {
        if (sessions.Count == 0)
            output.WriteLine("No session yet: record one with `trayledger record session`.");
        var table = new TextTable(
            Column.Left("session"), Column.Left("date"), Column.Right("area"), Column.Right("developer"),
            Column.Left("bath"), Column.Left("sheets"));
        foreach (var session in sessions)
            table.Add(
                session.Session, Dates.Text(session.Date), session.Area.ToText(view.Style),
                session.Developer.ToText(view.Style), session.Bath ?? "-", Sheets(session));
        table.WriteTo(output, view.Width);
    }

    /// <summary>What was developed, the same film, group and fate together.</summary>
    private static string Sheets(SessionRecord session) => string.Join(", ", session.Lines
        .GroupBy(line => (line.Item, line.Group, line.Fate))
        .Select(
            lines =>
                $"{lines.Sum(line => line.Sheets)} {lines.Key.Item}{Spaced(lines.Key.Group)}"
                    + $"{Spaced(Fate(lines.Key.Fate))}"));

    private static string Fate(Fate fate) => fate == Core.Sessions.Fate.Negative ? "" : fate.Name();

    private static string Spaced(string word) => word.Length == 0 ? "" : $" {word}";
}
