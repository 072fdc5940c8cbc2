namespace Ledger.App.Commands.Show;

/// <summary>show costs: what a period cost, down to the sheet.</summary>
internal sealed class ShowCosts : ShowCommand<CostsShown>
{
    private readonly CostOptions _costs = new();
    private readonly Option<string?> _film = Typed.Option<string?>(
        "--film", "ITEM", Text.NotEmpty, "one film only: its sheets, its stock, and its share of the chemistry")
        .Offered(Offers.Films);

    private readonly Option<CostGrouping?> _by = Typed.Choice<CostGrouping>(
        "--by", "PART", CostSlices.Groupings, "part",
            "the parts of the period: film, session, month, year, process, developer, bath (the fixer) or emulsion "
            + "number");

    public ShowCosts(Workbench bench)
        : base(bench, "costs", "Shows what a period cost, for each sheet used, each negative and each keeper.", """
            Spent is what was there when the period began and what was bought since; all of
            it is accounted for. The figures per sheet count the spoiled sheets as well, but
            not those for practice. With --film every figure is that film's.
            Example: trayledger show costs --by month --formula average
            """, CostsShape.Of, ["--from", "--to"])
    {
        foreach (var option in _costs.All)
            Options.Add(option);
        Options.Add(_film);
        Options.Add(_by);
    }

    protected override CostsShown Read(View view, ParseResult parse)
    {
        var film = parse.GetValue(_film) is { } code ? Film(code.Trim(), view) : null;
        var costs = _costs.Read(parse, view.Ledger, view.Holdings);
        var (formula, asked) = (_costs.Formula(parse, view.Holdings), _costs.Asked(parse) is not null);
        Revaluation? stock = film is null && !asked
            ? null : new(view.Ledger.StockMoves(costs.Facts.To), formula, costs.Facts.From);
        return new(costs, film)
        {
            Account = film is null ? null : new(costs, stock!, film),
            CountsThen = _costs.CountsThen(parse),
            Grouping = parse.GetValue(_by),
            Formula = formula,
            MonthlyBudget = view.Holdings.Settings.MonthlyBudget,
            Revaluation = asked ? stock : null,
            Next = film is null ? NextSession.Of(view.Ledger, view.Holdings) : null,
            PriceRises =
            [
                .. TodayReading.PriceRises(view.Ledger, view.Holdings)
                    .Where(rise => film is null || rise.About.Equals(film, StringComparison.OrdinalIgnoreCase)),
            ],
        };
    }

    protected override void WriteText(CostsShown shown, View view, TextWriter output) =>
        CostsText.Write(shown, view, output);

    private static string Film(string code, View view)
    {
        var films = view.Holdings.ItemsOf(ItemKind.Film).Select(item => item.Code).ToList();
        return films.Find(film => film.Equals(code, StringComparison.OrdinalIgnoreCase))
            ?? throw new RefusedByCommandException(
                $"no film is called \"{code}\"; {Known.Names(code, films, "known")}");
    }
}
