using System.CommandLine;
using Ledger.App.Values;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.App.Commands.Record;

/// <summary>What only some items have: a density, a dead volume, a replenisher, an indicator, a powder behind it, other capacities.</summary>
internal sealed class HandlingOptions
{
    private readonly Option<OptionValue<Density?>> _density = OptionValue<Density?>.Option(
        "--density", "G/ML", Density, "grams per millilitre, so that a syrup can be weighed out");

    private readonly Option<OptionValue<Amount>> _dead = OptionValue<Amount>.Option(
        "--dead-volume", "AMOUNT", Amount.Parse, "what stays in each bottle because it cannot be drawn");

    private readonly Option<OptionValue<Volume?>> _replenisher = OptionValue<Volume?>.Option(
        "--replenisher-per-80", "ML", Text.Volume, "replenisher for each 80 square inches of film");

    private readonly Option<OptionValue<int?>> _ceiling = OptionValue<int?>.Option(
        "--replenisher-ceiling", "PERCENT", Text.Whole,
        "how much replenisher a bath may take before it is mixed anew, in per cent of its volume; otherwise 100");

    private readonly Option<OptionValue<string>> _indicator = OptionValue<string>.Option(
        "--indicator", "COLOUR", Text.NotEmpty, "the colour at which its indicator says that a bath of it is spent, such as purple");

    private readonly Option<OptionValue<string>> _stockOf = OptionValue<string>.Option(
        "--stock-of", "ITEM", Text.NotEmpty, "the powder or concentrate that this stock solution is mixed from");

    private readonly Option<Capacity[]> _capacities = Typed.Options(
        "--other-capacity", "CAPACITY", CapacityOf, "the capacity on another basis, to be read beside it: \"1600 maker's\"");

    public IEnumerable<Option> All => [_capacities, _density, _dead, _replenisher, _ceiling, _indicator, _stockOf];

    public Item Read(ParseResult parse, Item item) => item with
    {
        Density = parse.GetValue(_density).Or(item.Density),
        DeadVolume = parse.GetValue(_dead) is { IsGiven: true } dead ? dead.Value?.For(item) : item.DeadVolume,
        ReplenisherPer80SquareInches = parse.GetValue(_replenisher).Or(item.ReplenisherPer80SquareInches),
        ReplenisherCeilingPercent = parse.GetValue(_ceiling).Or(item.ReplenisherCeilingPercent),
        Indicator = parse.GetValue(_indicator).Or(item.Indicator),
        StockOf = parse.GetValue(_stockOf).Or(item.StockOf),
        OtherCapacities = parse.GetValue(_capacities) is { Length: > 0 } capacities ? capacities : item.OtherCapacities,
    };

    private static Density? Density(string text) => Core.Measures.Density.Of(Text.Number(text)!.Value)
        ?? throw new FormatException($"\"{text}\" is no density from 0.5 to 5 grams per millilitre, in thousandths");

    private static Capacity CapacityOf(string text) =>
        text.Trim().Split(' ', 2, StringSplitOptions.TrimEntries) is [var area, { Length: > 0 } basis]
        ? new(Text.SquareInches(area)!.Value, basis)
        : throw new FormatException(
            $"\"{text}\" is no capacity with its basis; write square inches per litre and the basis, such as \"1600 maker's\"");
}
