using System.CommandLine;
using System.Text.Json;
using Ledger.App.Output;
using Ledger.App.Wiring;
using Ledger.Core.Measures;
using Ledger.Core.Tracing;
using Ledger.Exchange.Export;

namespace Ledger.App.Commands.Show;

/// <summary>show sheets WORDS: finds sheets by number, subject, film, group, date, holder, bath, fate and emulsion
/// number.</summary>
internal sealed class ShowSheets : ShowCommand<ShowSheets.Found>
{
    private readonly SheetSearchOptions _search = new();
    private readonly Option<bool> _csv = new("--csv") { Description = "one row of CSV for each sheet instead of text" };

    public ShowSheets(Workbench bench)
        : base(bench, "sheets", "Finds sheets: by number, words of the subject, film, group, date, holder, bath, fate, emulsion number.", """
            All that is said must be so. Without anything it lists every sheet.
            Examples: trayledger show sheets mill --fate keeper
                      trayledger show sheets --bath F3 --from 2026-07-01 --csv
            On paper: trayledger print sheets mill; what one came through: trayledger trace.
            """)
    {
        _search.AddTo(this);
        Options.Add(_csv);
    }

    protected override Found Read(View view, ParseResult parse)
    {
        var search = _search.Read(parse);
        return new([.. view.Ledger.Cards(search, view.AsOf).Where(search.Finds)], parse.GetValue(_csv));
    }

    protected override void WriteText(Found found, View view, TextWriter output)
    {
        if (found.AsCsv)
        {
            CsvTable.Write(output, SheetTable.Columns, found.Cards.Select(SheetTable.Row));
            return;
        }

        output.WriteLine(found.Cards.Count == 0 ? "No sheet is like that." : Counted.Of(found.Cards.Count, "sheet"));
        var table = new TextTable(
            Column.Left("sheet"), Column.Left("date"), Column.Left("film"), Column.Left("group"), Column.Left("fate"),
                Column.Left("where"), Column.Left("subject"));
        foreach (var card in found.Cards)
            table.Add(card.Name, TraceText.Day(card), card.Item, card.Group, card.FateText, card.Where, card.Subject);
        table.WriteTo(output, view.Width);
    }

    protected override void WriteJson(Found found, View view, Utf8JsonWriter json)
    {
        json.WriteString("asOf", Dates.Text(view.AsOf));
        TraceJson.Cards("sheets", found.Cards, json);
    }

    /// <summary>What was found, and how it is written.</summary>
    internal sealed record Found(IReadOnlyList<SheetCard> Cards, bool AsCsv);
}
