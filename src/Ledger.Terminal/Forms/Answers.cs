using System.Globalization;
using Ledger.Core.Measures;
using NodaTime;

namespace Ledger.Terminal.Forms;

/// <summary>Reads the fields of a form. What cannot be read becomes a sentence, and the form is not complete.</summary>
internal sealed class Answers
{
    private readonly List<string> _problems;
    private readonly string _where;

    public Answers()
        : this([], "")
    {
    }

    private Answers(List<string> problems, string where) => (_problems, _where) = (problems, where);

    /// <summary>Reads the fields of one line among several; a problem says in which line it is.</summary>
    public Answers InLine(int number) => new(_problems, $"line {number}, ");

    /// <summary>What is wrong, field by field.</summary>
    public IReadOnlyList<string> Problems => _problems;

    /// <summary>What stands in the field; asked for when it must not be empty.</summary>
    public string Needed(FormField field)
    {
        if (field.IsEmpty)
            Problem($"{field.Label}: nothing is written yet");
        return field.Text.Trim();
    }

    /// <summary>What stands in the field, or null when it is empty.</summary>
    public static string? Optional(FormField field) => field.IsEmpty ? null : field.Text.Trim();

    /// <summary>A date.</summary>
    public LocalDate Date(FormField field) => OptionalDate(field) ?? Missing<LocalDate>(field);

    /// <summary>A date, or null when the field is empty.</summary>
    public LocalDate? OptionalDate(FormField field)
    {
        if (field.IsEmpty)
            return null;
        if (Dates.Parse(field.Text) is not { } date)
            return Wrong<LocalDate>(field, "a date such as 2026-03-15");
        return date;
    }

    /// <summary>A whole number.</summary>
    public int Whole(FormField field) => field.IsEmpty ? Missing<int>(field) : OptionalWhole(field) ?? 0;

    /// <summary>A whole number, or null when the field is empty.</summary>
    public int? OptionalWhole(FormField field)
    {
        if (field.IsEmpty)
            return null;
        return TypedNumber.Parse(field.Text) is { } figure && figure == decimal.Truncate(figure) && figure is >= int.MinValue and <= int.MaxValue
            ? (int)figure
            : Wrong<int>(field, "a whole number");
    }

    /// <summary>A number; 0 when the field is empty.</summary>
    public decimal Figure(FormField field) => OptionalFigure(field) ?? 0;

    /// <summary>A number, or null when the field is empty.</summary>
    public decimal? OptionalFigure(FormField field)
    {
        if (field.IsEmpty)
            return null;
        if (TypedNumber.Parse(field.Text) is not { } figure)
            return Wrong<decimal>(field, "a number such as 31.25");
        return figure;
    }

    /// <summary>An amount of money; none when the field is empty.</summary>
    public Money Money(FormField field)
    {
        var figure = Figure(field);
        return Scaled.ToBase(figure, Core.Measures.Money.PerUnit) is { } millionths
            ? new(millionths)
            : Wrong<Money>(field, "an amount such as 42.00");
    }

    /// <summary>A quantity in a unit; null when the field is empty.</summary>
    public Quantity? Quantity(FormField field, Unit unit)
    {
        if (OptionalFigure(field) is not { } figure)
            return null;
        if (Scaled.ToBase(figure, unit.BasePerUnit()) is not { } whole)
            return Wrong<Quantity>(
                field, unit.BasePerUnit() == 1 ? $"a whole number of {unit.Name()}s" : $"at most three decimals of {unit.Name()}");
        return new(whole, unit);
    }

    /// <summary>A quantity in a unit.</summary>
    public Quantity NeededQuantity(FormField field, Unit unit) => field.IsEmpty ? Missing<Quantity>(field) : Quantity(field, unit) ?? default;

    /// <summary>An area in square inches; null when the field is empty.</summary>
    public Area? Area(FormField field)
    {
        if (OptionalFigure(field) is not { } inches)
            return null;
        return inches is > 0 and < 10_000_000
            ? Core.Measures.Area.FromSquareInches(inches)
            : Wrong<Area>(field, "square inches, more than nothing");
    }

    /// <summary>A format of film or paper.</summary>
    public Format? Format(FormField field, FormatTable formats)
    {
        if (!formats.TryFind(field.Text, out var format))
            Problem($"{field.Label}: {formats.Unknown(field.Text)}");
        return format;
    }

    /// <summary>A volume in millilitres; null when the field is empty.</summary>
    public Volume? Volume(FormField field)
    {
        if (Quantity(field, Unit.Millilitre) is not { } quantity)
            return null;
        return quantity.Base < 0
            ? Wrong<Volume>(field, "a volume that is not negative")
            : Core.Measures.Volume.FromMicrolitres(quantity.Base);
    }

    /// <summary>A weight that is written with its unit: "31.25g".</summary>
    public Quantity? Weight(FormField field) =>
        decimal.TryParse(
            field.Text.Trim().TrimEnd('g'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out var grams)
        && Scaled.ToBase(grams, Unit.Gram.BasePerUnit()) is { } milligrams
            ? new(milligrams, Unit.Gram)
            : Wrong<Quantity>(field, "grams such as 31.25g");

    /// <summary>A dilution; null when the field is empty.</summary>
    public Dilution? Dilution(FormField field)
    {
        if (field.IsEmpty)
            return null;
        if (!Core.Measures.Dilution.TryParse(field.Text, out var dilution, out var problem))
            Problem($"{field.Label}: {problem}");
        return dilution;
    }

    /// <summary>The position of what stands in the field among the names that are accepted.</summary>
    public int OneOf(FormField field, IReadOnlyList<string> names)
    {
        for (var i = 0; i < names.Count; i++)
            if (names[i].Equals(field.Text.Trim(), StringComparison.OrdinalIgnoreCase))
                return i;
        return Wrong<int>(field, string.Join(", ", names));
    }

    /// <summary>A problem of the form's own.</summary>
    public void Problem(string sentence) => _problems.Add(_where + sentence);

    private T Missing<T>(FormField field)
        where T : struct
    {
        Problem($"{field.Label}: nothing is written yet");
        return default;
    }

    private T Wrong<T>(FormField field, string accepted)
        where T : struct
    {
        Problem($"{field.Label}: \"{field.Text.Trim()}\" is not accepted; write {accepted}");
        return default;
    }
}
