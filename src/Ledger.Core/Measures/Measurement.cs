using System.Buffers;

namespace Ledger.Core.Measures;

/// <summary>A number with the unit it was written in: 25, 25ml, 1.5 l, 20floz, 30g, "4 sheets".</summary>
/// <param name="Value">The number.</param>
/// <param name="Unit">What the unit counts; null when none was written.</param>
/// <param name="Factor">How many of <paramref name="Unit"/> the written unit is: 1000 for litres.</param>
public readonly record struct Measurement(decimal Value, Unit? Unit, decimal Factor)
{
    /// <summary>A US fluid ounce in millilitres, exact (NIST Handbook 44, appendix C).</summary>
    public const decimal MillilitresPerFluidOunce = 29.5735295625m;

    private static readonly SearchValues<char> Figures = SearchValues.Create("0123456789.,-+");

    /// <summary>The units that may be written, as a refusal lists them.</summary>
    public const string Units = "ml, l, floz, g, kg, sheets, rolls, pieces";

    /// <summary>Reads it, or says what is accepted.</summary>
    public static Measurement? Read(string text, out string refusal)
    {
        var trimmed = text.Trim();
        var length = trimmed.AsSpan().IndexOfAnyExcept(Figures);
        var number = length < 0 ? trimmed : trimmed[..length];
        if (Numbers.Read(number, out refusal) is not { } value)
        {
            if (number.Length == 0 || refusal == Numbers.Accepted)
                refusal = "a number with its unit, such as 25ml, 1.5l or 30g";
            return null;
        }

        var name = length < 0 ? "" : trimmed[length..].Trim();
        if (UnitOf(name) is not { } unit)
        {
            refusal = $"a number with one of the units {Units}";
            return null;
        }

        return new(value, unit.Unit, unit.Factor);
    }

    /// <summary>
    /// The measurement in base units of <paramref name="unit"/>, or null with what is accepted. Fluid ounces meet no
    /// whole microlitre and are rounded to the nearest; anything else is kept exactly or refused.
    /// </summary>
    public long? InBase(Unit unit, out string refusal)
    {
        var value = Value * Factor;
        if (Factor == MillilitresPerFluidOunce)
            value = Math.Round(value, 3, MidpointRounding.AwayFromZero);
        refusal = unit.BasePerUnit() == 1 ? $"a whole number of {unit.Plural()}"
            : $"{unit.Name()} with at most three decimals";
        return Scaled.ToBase(value, unit.BasePerUnit());
    }

    private static (Unit? Unit, decimal Factor)? UnitOf(string name) => name.ToLowerInvariant() switch
    {
        "" => (null, 1),
        "l" or "litre" or "litres" or "liter" or "liters" => (Measures.Unit.Millilitre, 1000),
        "kg" => (Measures.Unit.Gram, 1000),
        "floz" or "fl oz" or "fl. oz" or "fl.oz" or "fl. oz." => (Measures.Unit.Millilitre, MillilitresPerFluidOunce),
        var other when Measures.Units.Named(other) is { } unit => (unit, 1),
        ['s' or 'r' or 'p', .. var middle, 's'] other when Measures.Units.Named(other[..^1]) is { } unit
            && middle.Length > 0 => (unit, 1),
        _ => null,
    };
}
