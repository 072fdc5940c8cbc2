namespace Ledger.Core.Measures;

/// <summary>
/// An area of film or paper, zero or more, in hundredths of a square millimetre: a square inch is exactly 64 516.
/// </summary>
public readonly record struct Area : IComparable<Area>
{
    /// <summary>Hundredths of a square millimetre in a square inch: 25.4² × 100, exact (16 CFR 500.19).</summary>
    public const long PerSquareInch = 64_516;

    private const long PerSquareCentimetre = 10_000;

    private Area(long hundredths) => Hundredths = hundredths;

    /// <summary>The area in hundredths of a square millimetre.</summary>
    public long Hundredths { get; }

    /// <summary>The area in square inches.</summary>
    public decimal SquareInches => (decimal)Hundredths / PerSquareInch;

    /// <summary>The area in square centimetres.</summary>
    public decimal SquareCentimetres => (decimal)Hundredths / PerSquareCentimetre;

    /// <summary>
    /// 80 square inches: one 8x10, four 4x5, one roll of 120 or 135-36 (Darkroom Cookbook, 3rd ed., p. 108).
    /// </summary>
    public static Area Unit80 { get; } = new(80 * PerSquareInch);

    /// <summary>No area.</summary>
    public static Area Zero => default;

    /// <summary>An area in whole base units.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public static Area FromHundredths(long hundredths)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(hundredths);
        return new(hundredths);
    }

    /// <summary>
    /// An area in square inches, rounded to the nearest base unit (half a hundredth of a square millimetre at the
    /// most).
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public static Area FromSquareInches(decimal squareInches) =>
        FromHundredths(decimal.ToInt64(Math.Round(squareInches * PerSquareInch, MidpointRounding.AwayFromZero)));

    /// <summary>
    /// Reads an area such as "80 sqin" or "516.128 cm2", square inches when no unit is written; null when it is
    /// something else or none.
    /// </summary>
    public static Area? Read(string text)
    {
        var trimmed = text.Trim().ToLowerInvariant();
        var digits = trimmed.TakeWhile(c => char.IsAsciiDigit(c) || c == '.').Count();
        long? perUnit = trimmed[digits..].Replace(" ", "", StringComparison.Ordinal) switch
        {
            "" or "sqin" or "in2" or "in²" => PerSquareInch,
            "cm2" or "cm²" or "sqcm" => PerSquareCentimetre,
            _ => null,
        };
        var isNumber = decimal.TryParse(trimmed[..digits], NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture, out var number);
        return isNumber && perUnit is { } scale && number is > 0 and < 1_000_000
            ? FromHundredths(decimal.ToInt64(Math.Round(number * scale, MidpointRounding.AwayFromZero)))
            : null;
    }

    /// <summary>The area with a film's weight on a fixer, rounded up so that a load is never understated.</summary>
    /// <param name="factorThousandths">1000 for conventional film, 1500 for a film that loads a fixer one and a half
    /// times.</param>
    public Area Weighted(int factorThousandths) => new(Share.UpTo(Hundredths, factorThousandths, 1000));

    /// <summary>The sum.</summary>
    public static Area operator +(Area left, Area right) => new(left.Hundredths + right.Hundredths);

    /// <summary>The difference, but never below none: what is left of a capacity.</summary>
    public Area LessUsed(Area used) => new(Math.Max(0, Hundredths - used.Hundredths));

    /// <summary>So many times the area.</summary>
    public static Area operator *(Area area, long times) => FromHundredths(area.Hundredths * times);

    /// <inheritdoc/>
    public int CompareTo(Area other) => Hundredths.CompareTo(other.Hundredths);

    /// <summary>Whether the left is less.</summary>
    public static bool operator <(Area left, Area right) => left.Hundredths < right.Hundredths;

    /// <summary>Whether the left is more.</summary>
    public static bool operator >(Area left, Area right) => left.Hundredths > right.Hundredths;

    /// <summary>Whether the left is not more.</summary>
    public static bool operator <=(Area left, Area right) => left.Hundredths <= right.Hundredths;

    /// <summary>Whether the left is not less.</summary>
    public static bool operator >=(Area left, Area right) => left.Hundredths >= right.Hundredths;

    /// <summary>"320 sq in".</summary>
    public override string ToString() => ToText(MeasureStyle.Metric);

    /// <summary>The area in the user's units, to the tenth.</summary>
    public string ToText(MeasureStyle style) => style.Surface(this);
}
