using System.CommandLine;
using System.Text.Json;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Costing;
using Ledger.Core.Measures;
using Ledger.Core.Stock;
using NodaTime;

namespace Ledger.App.Commands.Show;

/// <summary>show costs: what a period cost, down to the sheet.</summary>
internal sealed class ShowCosts : ShowCommand<CostsShown>
{
    private readonly Option<LocalDate?> _from = Typed.Option(
        "--from", "DATE", Text.Date, "the first day; otherwise a year before the last");
    private readonly Option<LocalDate?> _to = Typed.Option(
        "--to", "DATE", Text.Date, "the last day; otherwise today, or the day of --as-of");
    private readonly Option<string?> _film = Typed.Option<string?>("--film", "ITEM", Text.NotEmpty, "the sheets of one film only");

    private readonly Option<CostGrouping?> _by = Typed.Option(
        "--by", "PART", Text.OneOf<CostGrouping>(CostSlices.Groupings, "part"), "the parts of the period: film, session, month or year");

    private readonly Option<CostFormula?> _formula = Typed.Option(
        "--formula", "FORMULA", Text.OneOf<CostFormula>(Formulas, "formula"),
        "what the stock's uses would have cost by lot (as the ledger posts them), fifo or average");

    private readonly Option<bool> _practice = new("--with-practice")
    {
        Description = "count sheets for practice in what a sheet and a negative cost",
    };

    private static readonly string[] Formulas = ["lot", "fifo", "average"];

    public ShowCosts(Workbench bench)
        : base(bench, "costs", "What a period cost, for each sheet used, each negative and each keeper.", """
            Spent is what was there when the period began and what was bought since; all of
            it is accounted for, to the last millionth. The figures per sheet count the
            spoiled sheets as well, but not those for practice.
            Example: trayledger show costs --from 2025-04-01 --to 2026-03-31 --by month
            """)
    {
        Options.Add(_from);
        Options.Add(_to);
        Options.Add(_film);
        Options.Add(_by);
        Options.Add(_formula);
        Options.Add(_practice);
    }

    protected override CostsShown Read(View view, ParseResult parse)
    {
        var to = parse.GetValue(_to) ?? view.AsOf;
        var from = parse.GetValue(_from) ?? to.PlusYears(-1).PlusDays(1);
        if (from > to)
            throw new FormatException($"the period ends on {Dates.Text(to)}, before it begins on {Dates.Text(from)}");
        var film = parse.GetValue(_film) is { } code ? Film(code.Trim(), view) : null;
        return new(new(view.Ledger.Costs(from, to), parse.GetValue(_practice)), film)
        {
            Grouping = parse.GetValue(_by),
            Formula = parse.GetValue(_formula),
            Revaluation = parse.GetValue(_formula) is { } formula ? new(view.Ledger.StockMoves(to), formula, from) : null,
            Next = NextSession.Of(view),
        };
    }

    protected override void WriteText(CostsShown shown, View view, TextWriter output) => CostsText.Write(shown, view, output);

    protected override void WriteJson(CostsShown shown, View view, Utf8JsonWriter json) => CostsJson.Write(shown, view, json);

    private static string Film(string code, View view)
    {
        var films = view.Holdings.Items.Where(item => item.Kind == ItemKind.Film).Select(item => item.Code).ToList();
        return films.Find(film => film.Equals(code, StringComparison.OrdinalIgnoreCase))
            ?? throw new RefusedByCommandException($"there is no film \"{code}\"; {Known.Names(films, "known")}");
    }
}
