namespace Ledger.App.Commands.Show;

/// <summary>Which costs are read: the days, the formula, and whether practice counts.</summary>
internal sealed class CostOptions
{
    private readonly Option<LocalDate?> _from = Typed.Option(
        "--from", "DATE", Text.Date, "the first day; otherwise a year before the last");

    private readonly Option<LocalDate?> _to = Typed.Option(
        "--to", "DATE", Text.Date, "the last day; otherwise today, or the day of --as-of");

    private readonly Option<CostFormula?> _formula = Typed.Choice<CostFormula>(
        "--formula", "FORMULA", CostFormulas.ShortNames, "formula",
        "how what was used is costed: lot (first in, first out unless you named another lot), fifo (whichever was "
            + "taken) or average; otherwise as the setting cost-formula says");

    private readonly Option<bool> _practice = new("--with-practice")
    {
        Description = "count sheets for practice in what a sheet and a negative cost",
    };

    private readonly Option<CountedFates?> _fates = Typed.Choice<CountedFates>(
        "--fates", "FATES", ["then", "now"], "way to count",
        "which fates count: now, as sheets stand today or on the day of --as-of; or then, as they stood at the end "
        + "of the period");

    public IReadOnlyList<Option> All => [_from, _to, _formula, _practice, _fates];

    /// <summary>Whether the fates at the end of the period count.</summary>
    public bool CountsThen(ParseResult parse) => parse.GetValue(_fates) == CountedFates.Then;

    /// <summary>The formula that was asked for; null when none was.</summary>
    public CostFormula? Asked(ParseResult parse) => parse.GetValue(_formula);

    public CostReading Read(ParseResult parse, ILedger ledger, Holdings holdings)
    {
        var to = parse.GetValue(_to) ?? holdings.AsOf;
        var from = parse.GetValue(_from) ?? to.PlusYears(-1).PlusDays(1);
        if (from > to)
            throw new FormatException($"the period ends on {Dates.Text(to)}, before it begins on {Dates.Text(from)}");
        return new(ledger.Costs(from, to, Formula(parse, holdings), CountsThen(parse) ? to : holdings.AsOf),
            parse.GetValue(_practice));
    }

    public CostFormula Formula(ParseResult parse, Holdings holdings) => Asked(parse) ?? holdings.Settings.CostFormula;

    private enum CountedFates
    {
        Then,
        Now,
    }
}
