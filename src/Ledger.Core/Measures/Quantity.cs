namespace Ledger.Core.Measures;

/// <summary>
/// So much of something, in whole base units (see <see cref="Unit"/>). Zero or more; differences may be negative.
/// </summary>
/// <param name="Base">Microlitres, milligrams, or ones.</param>
/// <param name="Unit">What is counted.</param>
public readonly record struct Quantity(long Base, Unit Unit) : IComparable<Quantity>
{
    /// <summary>The quantity in its unit: 31.25 for 31 250 microlitres.</summary>
    public decimal Value => (decimal)Base / Unit.BasePerUnit();

    /// <summary>Whether nothing is there.</summary>
    public bool IsZero => Base == 0;

    /// <summary>The quantity of <paramref name="value"/> units.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Finer than one base unit.</exception>
    public static Quantity Of(decimal value, Unit unit) => new(Scaled.ToBaseExactly(value, unit.BasePerUnit()), unit);

    /// <summary>A liquid quantity.</summary>
    public static Quantity Of(Volume volume) => new(volume.Microlitres, Unit.Millilitre);

    /// <summary>The sum; both must have the same unit.</summary>
    public static Quantity operator +(Quantity left, Quantity right) => new(left.Base + right.In(left.Unit), left.Unit);

    /// <summary>The difference; both must have the same unit.</summary>
    public static Quantity operator -(Quantity left, Quantity right) => new(left.Base - right.In(left.Unit), left.Unit);

    /// <inheritdoc/>
    public int CompareTo(Quantity other) => Base.CompareTo(other.In(Unit));

    /// <summary>Whether the left is less; both must have the same unit.</summary>
    public static bool operator <(Quantity left, Quantity right) => left.CompareTo(right) < 0;

    /// <summary>Whether the left is more; both must have the same unit.</summary>
    public static bool operator >(Quantity left, Quantity right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left is not more; both must have the same unit.</summary>
    public static bool operator <=(Quantity left, Quantity right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the left is not less; both must have the same unit.</summary>
    public static bool operator >=(Quantity left, Quantity right) => left.CompareTo(right) >= 0;

    /// <summary>In full, as it can be read again: "31.125 ml", "4 sheets", "1 roll".</summary>
    public override string ToString() =>
        Unit is Unit.Millilitre or Unit.Gram ? $"{Scaled.InUnits(Base, 1000)} {Unit.Name()}"
            : $"{Scaled.InUnits(Base, 1)} {Counted.Noun(Math.Abs((decimal)Base), Unit.Name())}";

    /// <summary>
    /// As people read it, in the user's units and as finely as they can measure: "31.13 ml", "1.06 fl oz".
    /// </summary>
    public string ToText(MeasureStyle style) => Unit switch
    {
        Unit.Millilitre => style.Liquid(Base),
        Unit.Gram => MeasureStyle.Weight(Base),
        _ => ToString(),
    };

    private long In(Unit unit) => unit == Unit ? Base
        : throw new ArgumentException($"{Unit.Name()} and {unit.Name()} cannot be added or compared");
}
