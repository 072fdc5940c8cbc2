using System.CommandLine;
using Ledger.App.Values;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.App.Commands.Record;

/// <summary>How an item is used: its dilution, what a bath of it can take, and how heavily a film loads a fixer.</summary>
internal sealed class UseOptions
{
    private readonly Option<Said<Dilution>> _dilution = Said<Dilution>.Option(
        "--dilution", "1+N", Dilution.Parse, "how it is usually diluted");
    private readonly Option<Said<Area?>> _capacity = Said<Area?>.Option(
        "--capacity", "SQIN", Text.SquareInches, "what a litre of its working solution can take, in square inches of film");

    private readonly Option<string?> _basis = new("--basis")
    {
        HelpName = "TEXT",
        Description = "where that capacity comes from: maker's, handbook, strict, own",
    };
    private readonly Option<Said<Volume?>> _minimum = Said<Volume?>.Option(
        "--minimum-per-80", "ML", Text.Volume, "the least concentrate for each 80 square inches of film, whatever the dilution");

    private readonly Option<int?> _weight = Typed.Option<int?>(
        "--fixer-factor", "NUMBER", text => Thousandths(Text.Number(text)!.Value),
        "how heavily a film loads a fixer: 1 for conventional grain, about 1.5 for a tabular one");

    public IEnumerable<Option> All => [_dilution, _capacity, _basis, _minimum, _weight];

    public Item Read(ParseResult parse, Item item) => item with
    {
        Dilution = parse.GetValue(_dilution).Or(item.Dilution),
        Capacity = parse.GetValue(_capacity).Or(item.Capacity?.PerLitre) is { } perLitre
            ? new(perLitre, parse.GetValue(_basis) ?? item.Capacity?.Basis ?? "")
            : null,
        MinimumPer80SquareInches = parse.GetValue(_minimum).Or(item.MinimumPer80SquareInches),
        FixerFactorThousandths = parse.GetValue(_weight) ?? item.FixerFactorThousandths,
    };

    private static int Thousandths(decimal weight) => weight is >= 0.1m and <= 10 && Scaled.ToBase(weight, 1000) is { } thousandths
        ? (int)thousandths
        : throw new FormatException(
            $"{Scaled.ToText(weight, 6)} is not a fixer factor from 0.1 to 10 with at most three decimals");
}
