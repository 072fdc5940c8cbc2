namespace Ledger.Core.Measures;

/// <summary>
/// How heavy a liquid is, for what is easier weighed than measured: a syrup. Held in thousandths of a gram per
/// millilitre.
/// </summary>
/// <param name="Thousandths">Milligrams per millilitre; positive.</param>
public readonly record struct Density(int Thousandths)
{
    /// <summary>Grams per millilitre.</summary>
    public decimal GramsPerMillilitre => Thousandths / 1000m;

    /// <summary>
    /// The density of so many grams per millilitre, or null when it is finer than a thousandth or not from 0.5 to 5.
    /// </summary>
    public static Density? Of(decimal gramsPerMillilitre) =>
        Scaled.ToBase(gramsPerMillilitre, 1000) is { } thousandths and >= 500 and <= 5000
            ? new((int)thousandths)
            : null;

    /// <summary>The volume of a weight, to the nearest microlitre.</summary>
    public Quantity VolumeOf(Quantity grams) => new(Share.Nearest(grams.Base, 1000, Thousandths), Unit.Millilitre);

    /// <summary>The weight of a volume, to the nearest milligram.</summary>
    public Quantity WeightOf(Quantity millilitres) =>
        new(Share.Nearest(millilitres.Base, Thousandths, 1000), Unit.Gram);
}
