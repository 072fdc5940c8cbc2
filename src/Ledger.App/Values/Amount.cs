using System.Globalization;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.App.Values;

/// <summary>A quantity as it is typed: 25, 25ml, 1.5l, 30g, "4 sheets". Without a unit it is in the unit of its item.</summary>
/// <param name="Value">The number.</param>
/// <param name="Measure">The unit it was written with, or null.</param>
/// <param name="Factor">How many of the ledger's units one written unit is: 1000 for litres.</param>
internal sealed record Amount(decimal Value, Unit? Measure, decimal Factor)
{
    private const decimal MillilitresPerFluidOunce = 29.5735295625m;

    public static Amount Parse(string text)
    {
        var trimmed = text.Trim();
        var length = trimmed.TakeWhile(c => char.IsAsciiDigit(c) || c is '.' or '-' or '+').Count();
        if (!decimal.TryParse(trimmed[..length], Text.Signed, CultureInfo.InvariantCulture, out var value))
            throw new FormatException($"\"{text}\" is not an amount; write a number and its unit, such as 25ml, 1.5l or 30g");
        if (trimmed[length..] is [',', >= '0' and <= '9', ..])
            throw new FormatException($"\"{text}\": write a decimal point: {trimmed[..length]}.{trimmed[(length + 1)..]}; nothing parts thousands");
        var (unit, factor) = UnitOf(trimmed[length..].Trim(), text);
        return new(value, unit, factor);
    }

    /// <summary>The amount, or null when the text is something else.</summary>
    public static Amount? TryParse(string text)
    {
        try
        {
            return Parse(text);
        }
        catch (FormatException)
        {
            return null;
        }
    }

    /// <summary>The quantity, by weight or volume where the item has a density; another unit is for the rules to refuse.</summary>
    /// <param name="item">The item; null for none.</param>
    /// <param name="plain">The unit of a plain number where there is no item.</param>
    public Quantity For(Item? item, Unit plain = Unit.Piece)
    {
        var unit = Measure ?? item?.Unit ?? plain;
        var quantity = new Quantity(Base(unit), unit);
        return item?.Converted(quantity) ?? quantity;
    }

    /// <summary>The volume, in millilitres where no unit was written.</summary>
    public Volume AsVolume(string text) =>
        Measure is null or Unit.Millilitre && Base(Unit.Millilitre) is >= 0 and var microlitres
            ? Volume.FromMicrolitres(microlitres)
            : throw new FormatException($"\"{text}\" is not a volume; write one such as 25ml or 1.5l");

    /// <summary>Fluid ounces meet no whole microlitre and are rounded to the nearest; anything else is kept exactly or refused.</summary>
    private long Base(Unit unit)
    {
        var value = Value * Factor;
        if (Factor == MillilitresPerFluidOunce)
            value = Math.Round(value, 3, MidpointRounding.AwayFromZero);
        if (unit.BasePerUnit() == 1 && value != decimal.Truncate(value))
            throw new FormatException($"{Scaled.ToText(Value, 6)} is not accepted: whole {unit.Plural()} only");
        return Scaled.ToBase(value, unit.BasePerUnit())
            ?? throw new FormatException($"{Scaled.ToText(Value, 6)} {unit.Name()} is finer or larger than the ledger keeps");
    }

    private static (Unit? Unit, decimal Factor) UnitOf(string name, string text) => name.ToLowerInvariant() switch
    {
        "" => (null, 1),
        "l" => (Unit.Millilitre, 1000),
        "kg" => (Unit.Gram, 1000),
        "floz" or "fl oz" => (Unit.Millilitre, MillilitresPerFluidOunce),
        var other => Units.Named(other) is { } unit ? (unit, 1)
            : other.EndsWith('s') && Units.Named(other[..^1]) is { } units and not (Unit.Millilitre or Unit.Gram) ? (units, 1)
            : throw new FormatException($"\"{text}\": \"{name}\" is no unit; known: ml, l, floz, g, kg, sheet, roll, piece"),
    };
}
