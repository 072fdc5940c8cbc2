using System.Globalization;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Terminal.Forms;

/// <summary>How an item is used: its dilution, what a bath of it can take, how heavily a film loads a fixer, how it is measured.</summary>
internal sealed class ItemUseFields
{
    /// <summary>The fields of a chemical, row by row.</summary>
    public IReadOnlyList<IReadOnlyList<FormField>> Rows =>
        [[Dilution, Minimum], [Capacity, Basis], [Others], [Density, Dead, Indicator], [Replenisher, Ceiling], [StockOf]];

    public FormField Dilution { get; } = new("Dilution", 10) { Hint = "One part and so many of water: 1+49." };

    public FormField Minimum { get; } = new("least ml", 8, FieldKind.Figure)
    {
        Hint = "The least concentrate for each 80 sq in of film, whatever the dilution.",
    };

    public FormField Capacity { get; } = new("Sq in/l", 8, FieldKind.Figure) { Hint = "What a litre of working solution can take." };

    public FormField Basis { get; } = new("basis", 12) { Hint = "Where that figure comes from: maker's, handbook, strict, own." };

    public FormField Others { get; } = new("other bases", 40) { Hint = "Read beside it: 1600 maker's; 2500 handbook." };

    public FormField Density { get; } = new("Density", 6, FieldKind.Figure) { Hint = "Grams per ml, so that a syrup can be weighed out." };

    public FormField Dead { get; } = new("not drawn", 6, FieldKind.Figure) { Hint = "What stays in each bottle because it cannot be drawn." };

    public FormField Indicator { get; } = new("indicator", 10) { Hint = "The colour of its indicator when it is spent, such as purple." };

    public FormField Replenisher { get; } = new("Replenisher", 6, FieldKind.Figure)
    {
        Hint = "Ml for each 80 sq in of film, where the developer is topped up.",
    };

    public FormField Ceiling { get; } = new("ceiling %", 5, FieldKind.Figure)
    {
        Hint = "Percent of its volume in replenisher, after which a bath is mixed anew.",
    };

    public FormField StockOf { get; } = new("Mixed from", 14) { Hint = "The powder or concentrate that this stock solution is mixed from." };

    public FormField Weight { get; } = new("fixer factor", 6, FieldKind.Figure)
    {
        Hint = "How heavily it loads a fixer: conventional grain 1, tabular about 1.5.",
    };

    /// <summary>Shows what is known.</summary>
    public void Offer(Item item)
    {
        Dilution.Offer(item.Dilution?.Text);
        Minimum.Offer(Ml(item.MinimumPer80SquareInches));
        Capacity.Offer(item.Capacity is { } capacity ? Inches(capacity) : "");
        Basis.Offer(item.Capacity?.Basis);
        Others.Offer(string.Join("; ", item.OtherCapacities.Select(other => $"{Inches(other)} {other.Basis}")));
        Density.Offer(item.Density is { } density ? Scaled.ToText(density.GramsPerMillilitre, 3) : "");
        Dead.Offer(item.DeadVolume is { } dead ? Scaled.ToText(dead.Value, 3) : "");
        Replenisher.Offer(Ml(item.ReplenisherPer80SquareInches));
        Indicator.Offer(item.Indicator);
        Ceiling.Offer(item.ReplenisherCeilingPercent?.ToString(CultureInfo.InvariantCulture));
        StockOf.Offer(item.StockOf);
        Weight.Offer(Scaled.InUnits(item.FixerFactorThousandths, 1000));
    }

    /// <summary>The item with what was written; the fields of another kind count for nothing.</summary>
    public Item Read(Answers answers, Item item) => item.Kind switch
    {
        ItemKind.Film => item with { FixerFactorThousandths = Thousandths(answers) },
        ItemKind.Chemical => item with
        {
            Dilution = answers.Dilution(Dilution),
            MinimumPer80SquareInches = answers.Volume(Minimum),
            Capacity = PerLitre(answers),
            OtherCapacities = [.. Others.Text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                .Select(other => OtherBasis(other, answers)).OfType<Capacity>()],
            Density = DensityOf(answers),
            DeadVolume = answers.Quantity(Dead, item.Unit),
            ReplenisherPer80SquareInches = answers.Volume(Replenisher),
            Indicator = Answers.Optional(Indicator),
            ReplenisherCeilingPercent = answers.OptionalWhole(Ceiling),
            StockOf = Answers.Optional(StockOf),
        },
        _ => item,
    };

    private Capacity? PerLitre(Answers answers) =>
        answers.Area(Capacity) is { } area ? new(area, Basis.Text.Trim()) : null;

    private static Capacity? OtherBasis(string text, Answers answers)
    {
        if (text.Split(' ', 2, StringSplitOptions.TrimEntries) is [var figure, { Length: > 0 } basis]
            && Figures.Parse(figure) is { } inches and > 0)
            return new(Area.FromSquareInches(inches), basis);
        answers.Problem($"other bases: \"{text}\" is not accepted; write square inches per litre and the basis, such as 1600 maker's");
        return null;
    }

    private Density? DensityOf(Answers answers)
    {
        if (answers.OptionalFigure(Density) is not { } figure)
            return null;
        if (Core.Measures.Density.Of(figure) is { } density)
            return density;
        answers.Problem($"Density: {Density.Text.Trim()} is not accepted; write grams per ml from 0.5 to 5 with at most three decimals");
        return null;
    }

    private int Thousandths(Answers answers)
    {
        if (answers.OptionalFigure(Weight) is not { } figure)
            return 1000;
        if (figure is > 0 and <= 10 && Scaled.ToBase(figure, 1000) is { } thousandths)
            return (int)thousandths;
        answers.Problem($"fixer factor: {Weight.Text.Trim()} is not accepted; write one from 0.1 to 10 with at most three decimals");
        return 1000;
    }

    private static string Ml(Volume? volume) => volume is { } known ? Scaled.ToText(known.Millilitres, 3) : "";

    private static string Inches(Capacity capacity) => Scaled.ToText(capacity.PerLitre.SquareInches, 3);
}
