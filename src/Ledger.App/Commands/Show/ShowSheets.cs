namespace Ledger.App.Commands.Show;

/// <summary>show sheets WORDS: finds sheets by number, subject, film, group, date, holder, bath, fate and emulsion
/// number.</summary>
internal sealed class ShowSheets : ShowCommand<IReadOnlyList<SheetCard>>
{
    private static readonly Shape<IReadOnlyList<SheetCard>> _shape = new Shape<IReadOnlyList<SheetCard>>()
        .AsOf().Table("sheets", (cards, _) => cards, TraceShape.Card, (_, rows) => rows);

    private readonly SheetSearchOptions _search = new();

    public ShowSheets(Workbench bench)
        : base(bench, "sheets",
            "Finds sheets: by number, words of the subject, film, group, date, holder, bath, fate, emulsion "
                + "number.", """
            All that is said must be so. Without anything it lists every sheet.
            Examples: trayledger show sheets mill --fate keeper
                      trayledger show sheets --bath F3 --from 2026-07-01 --format csv
            On paper: trayledger print sheets mill; what one came through: trayledger trace.
            """, _shape, ["--from", "--to"])
    {
        _search.AddTo(this);
    }

    protected override IReadOnlyList<SheetCard> Read(View view, ParseResult parse)
    {
        var search = _search.Read(parse);
        return [.. view.Ledger.Cards(search, view.AsOf).Where(search.Finds)];
    }

    protected override void WriteText(IReadOnlyList<SheetCard> cards, View view, TextWriter output)
    {
        output.WriteLine(cards.Count == 0 ? "No sheet is like that." : Counted.Of(cards.Count, "sheet"));
        var table = new TextTable(
            Column.Left("sheet"), Column.Left("date"), Column.Left("film"), Column.Left("group"), Column.Left("fate"),
                Column.Left("where"), Column.Left("subject"));
        foreach (var card in cards)
            table.Add(card.Name, TraceText.Day(card), card.Item, card.Group, card.FateText, card.Where, card.Subject);
        table.WriteTo(output, view.Width);
    }
}
