namespace Ledger.App.Commands.Show;

/// <summary>A session as it is shown.</summary>
/// <param name="Session">The session.</param>
/// <param name="Sheets">The sheets that it developed, negatives and others.</param>
internal sealed record SessionShown(SessionRecord Session, IReadOnlyList<SheetCard> Sheets);

/// <summary>show session X: one session with its sheets and their negatives.</summary>
internal sealed class ShowSession : ShowCommand<SessionShown>
{
    private const int Known = 1000;

    private static readonly Shape<SessionShown> _shape = new Shape<SessionShown>()
        .AsOf()
        .With((shown, _) => shown.Session, SessionShape.Own)
        .Table("sheets", (shown, _) => shown.Sheets, TraceShape.Card, (shown, rows) => shown with { Sheets = rows })
        .Table("lines", (shown, _) => shown.Session.Lines, SessionShape.Line);

    private readonly Argument<string> _session = Typed.Argument("session", Text.NotEmpty,
        "the session's name, such as S22").Offered(Offers.Sessions);

    public ShowSession(Workbench bench)
        : base(bench, "session", "Shows one session: its baths and developer, and its sheets with their negatives.", """
            Example: trayledger show session S22
            """, _shape) => Arguments.Add(_session);

    protected override SessionShown Read(View view, ParseResult parse)
    {
        var name = parse.GetRequiredValue(_session).Trim();
        var session = view.Ledger.Session(name, view.AsOf) ?? throw new RefusedByCommandException(
            $"there is no session \"{name}\" up to {Dates.Text(view.AsOf)}; "
                + Show.Known.Names(name, view.Ledger.Sessions(view.AsOf, null, Known).Select(known => known.Session),
                    "the last ones"));
        var search = new SheetSearch { Session = session.Session };
        return new(session, [.. view.Ledger.Cards(search, view.AsOf).Where(search.Finds)]);
    }

    protected override void WriteText(SessionShown shown, View view, TextWriter output)
    {
        var session = shown.Session;
        output.WriteLine(
            $"{session.Session}, {Dates.Text(session.Date)}: {Counted.Of(session.Sheets, "sheet")}, "
            + $"{session.Area.ToText(view.Style)}, {session.Process}");
        output.WriteLine(
            $"developer {session.Developer.ToText(view.Style)}, fixer {session.Bath ?? "not said"}, entry "
                + $"{session.Number}");
        if (session.Note.Length > 0)
            output.WriteLine(session.Note);
        output.WriteLine();
        var table = new TextTable(
            Column.Left("sheet"), Column.Left("film"), Column.Left("group"), Column.Right("batch"),
            Column.Left("fate"), Column.Left("subject"));
        foreach (var card in shown.Sheets)
            table.Add(card.Name, card.Item, card.Group, card.Batch is { } batch ? Scaled.ToText(batch, 0) : "",
                card.FateText, card.Subject);
        table.WriteTo(output, view.Width);
    }
}
