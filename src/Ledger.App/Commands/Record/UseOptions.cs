using System.CommandLine;
using Ledger.App.Values;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.App.Commands.Record;

/// <summary>How an item is used: its dilution, what a bath of it can take, and how heavily a film loads a fixer.</summary>
internal sealed class UseOptions
{
    private readonly Option<Dilution?> _dilution = Typed.Option("--dilution", "1+N", Text.OrNone(Text.Dilution), "how it is usually diluted");
    private readonly Option<Area?> _capacity = Typed.Option(
        "--capacity", "SQIN", Text.OrNone(Text.SquareInches), "what a litre of its working solution can take, in square inches of film");

    private readonly Option<string?> _basis = new("--basis") { HelpName = "TEXT", Description = "where that capacity comes from: maker's, handbook, strict, own" };
    private readonly Option<Volume?> _minimum = Typed.Option(
        "--minimum-per-80", "ML", Text.OrNone(Text.Volume), "the least concentrate for each 80 square inches of film, whatever the dilution");

    private readonly Option<decimal?> _weight = Typed.Option(
        "--fixer-weight", "NUMBER", Text.Number, "how heavily a film loads a fixer: 1 for conventional grain, about 1.5 for a tabular one");

    public IEnumerable<Option> All => [_dilution, _capacity, _basis, _minimum, _weight];

    public Item Read(ParseResult parse, Item item) => item with
    {
        Dilution = _dilution.Or(item.Dilution, parse),
        Capacity = _capacity.Or(item.Capacity?.PerLitre, parse) is { } perLitre
            ? new(perLitre, _basis.Or(item.Capacity?.Basis, parse) ?? "")
            : null,
        MinimumPer80SquareInches = _minimum.Or(item.MinimumPer80SquareInches, parse),
        FixerWeightThousandths = parse.GetValue(_weight) is { } weight ? Thousandths(weight) : item.FixerWeightThousandths,
    };

    private static int Thousandths(decimal weight) => weight is > 0 and <= 10 && Scaled.ToBase(weight, 1000) is { } thousandths
        ? (int)thousandths
        : throw new FormatException($"--fixer-weight: {Scaled.ToText(weight, 6)} is not a weight from 0.1 to 10 with at most three decimals");
}
