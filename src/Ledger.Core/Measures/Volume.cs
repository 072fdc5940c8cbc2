namespace Ledger.Core.Measures;

/// <summary>A volume of liquid, zero or more, in whole microlitres.</summary>
public readonly record struct Volume : IComparable<Volume>
{
    private Volume(long microlitres) => Microlitres = microlitres;

    /// <summary>The volume in microlitres.</summary>
    public long Microlitres { get; }

    /// <summary>The volume in millilitres.</summary>
    public decimal Millilitres => Microlitres / 1000m;

    /// <summary>The volume in litres.</summary>
    public decimal Litres => Microlitres / 1_000_000m;

    /// <summary>The volume in US fluid ounces (29.5735295625 ml exactly).</summary>
    public decimal FluidOunces => Millilitres / 29.5735295625m;

    /// <summary>A volume of whole microlitres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public static Volume FromMicrolitres(long microlitres)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(microlitres);
        return new(microlitres);
    }

    /// <summary>A volume in millilitres, at most three decimals.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, or finer than a microlitre.</exception>
    public static Volume FromMillilitres(decimal millilitres) =>
        FromMicrolitres(Scaled.ToBaseExactly(millilitres, 1000));

    /// <summary>The nearest volume that a graduate with marks every <paramref name="step"/> can measure.</summary>
    public Volume RoundedTo(Volume step) =>
        new(Share.Nearest(Microlitres, 1, step.Microlitres) * step.Microlitres);

    /// <summary>The sum.</summary>
    public static Volume operator +(Volume left, Volume right) => new(left.Microlitres + right.Microlitres);

    /// <summary>The difference.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It would be negative.</exception>
    public static Volume operator -(Volume left, Volume right) => FromMicrolitres(left.Microlitres - right.Microlitres);

    /// <summary>So many times the volume.</summary>
    public static Volume operator *(Volume volume, int times) => FromMicrolitres(volume.Microlitres * times);

    /// <inheritdoc/>
    public int CompareTo(Volume other) => Microlitres.CompareTo(other.Microlitres);

    /// <summary>Whether the left is less.</summary>
    public static bool operator <(Volume left, Volume right) => left.Microlitres < right.Microlitres;

    /// <summary>Whether the left is more.</summary>
    public static bool operator >(Volume left, Volume right) => left.Microlitres > right.Microlitres;

    /// <summary>Whether the left is not more.</summary>
    public static bool operator <=(Volume left, Volume right) => left.Microlitres <= right.Microlitres;

    /// <summary>Whether the left is not less.</summary>
    public static bool operator >=(Volume left, Volume right) => left.Microlitres >= right.Microlitres;

    /// <summary>"1250 ml".</summary>
    public override string ToString() => Quantity.Of(this).ToString();

    /// <summary>The volume in the user's units.</summary>
    public string ToText(MeasureStyle style) => style.Liquid(Microlitres);
}
