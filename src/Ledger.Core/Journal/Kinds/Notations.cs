using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Kinds;

/// <summary>
/// The sorts of values that entries are made of: the one place where each is read and written, for every door.
/// </summary>
public static class Notations
{
    /// <summary>
    /// The largest number that is accepted anywhere: far more than anybody keeps, far less than would overflow.
    /// </summary>
    public const decimal Largest = 1_000_000_000;

    private const string Blanks = " \t\r\n";

    /// <summary>A text of one line.</summary>
    /// <param name="longest">The most characters.</param>
    public static Notation<string> Line(int longest) => new(
        (text, _, _) => text.Length <= longest ? text : Parsed.Not<string>($"a text of at most {longest} characters"),
        (text, _) => text) { Placeholder = "TEXT" };

    /// <summary>The name or code of something.</summary>
    /// <param name="placeholder">What stands for it in help: BATH.</param>
    public static Notation<string> Name(string placeholder) => new(
        (text, _, _) => text.Length <= 200 ? text : Parsed.Not<string>("a name of at most 200 characters"),
        (text, _) => text) { Placeholder = placeholder };

    /// <summary>The name of something that exists, to be chosen from a list.</summary>
    public static Notation<string> Known(string placeholder) => new(
        (text, _, _) => text.Length <= 200 ? text : Parsed.Not<string>("a name of at most 200 characters"),
        (text, _) => text) { Placeholder = placeholder, Shape = Shape.Choice };

    /// <summary>Several names with commas, semicolons or blanks between them.</summary>
    public static Notation<IReadOnlyList<string>> Names(string placeholder) => new(
        (text, _,
            _) => text.Split([',', ';', .. Blanks], StringSplitOptions.RemoveEmptyEntries) is { Length: > 0 } names
            ? names : Parsed.Not<IReadOnlyList<string>>("one name at least"),
        (names, _) => string.Join(" ", names)) { Placeholder = placeholder, Divider = " " };

    /// <summary>Several names that may hold blanks, with commas or semicolons between them.</summary>
    public static Notation<IReadOnlyList<string>> LongNames(string placeholder) => new(
        (text, _, _) =>
            text.Split([',', ';'],
                StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) is { Length: > 0 } names
                ? names : Parsed.Not<IReadOnlyList<string>>("one name at least"),
        (names, _) => string.Join(", ", names)) { Placeholder = placeholder, Divider = ", " };

    /// <summary>A day.</summary>
    public static Notation<LocalDate> Date { get; } = new(
        (text, _, terms) => (terms.IsTyped ? Dates.ParseTyped(text, terms.Today) : Dates.Parse(text)) is { Year: >= 1000
            and < 9000 } date
            ? terms.Shift(date)
            : Parsed.Not<LocalDate>(terms.IsTyped ? Dates.AcceptedTyped : "a date that exists, written as 2026-03-15"),
        (date, _) => Dates.Text(date)) { Placeholder = "DATE", Shape = Shape.Date };

    /// <summary>Yes or no.</summary>
    public static Notation<bool> YesNo { get; } = OneOf("YES|NO", new Choices<bool>(("yes", true), ("no", false)),
        Shape.Tick);

    /// <summary>One of several words.</summary>
    public static Notation<T> OneOf<T>(string placeholder, Choices<T> choices, Shape shape = Shape.Choice)
        where T : notnull => new((text, _, _) => choices.Read(text), (value, _) => choices.Write(value))
        {
            Placeholder = placeholder, Shape = shape, Words = choices.Words,
        };

    /// <summary>A whole number.</summary>
    public static Notation<int> Whole(int least, int most) => new(
        (text, _, _) => Numbers.Read(text, out var _) is { } number && number == decimal.Truncate(number)
            && number >= least && number <= most
            ? (int)number : Parsed.Not<int>($"a whole number from {least} to {most}"),
        (number, _) => Scaled.ToText(number, 0)) { Placeholder = "COUNT", Shape = Shape.Number };

    /// <summary>A number with at most so many decimals.</summary>
    public static Notation<decimal> Number(decimal least, decimal most, int decimals,
        string placeholder = "NUMBER") => new(
        (text, _, _) =>
        {
            if (Numbers.Read(text, out var refusal) is not { } number)
                return Parsed.Not<decimal>(refusal == Numbers.Accepted ? Range(least, most, decimals) : refusal);
            return number >= least && number <= most && decimal.Round(number, decimals) == number
                ? number : Parsed.Not<decimal>(Range(least, most, decimals));
        },
        (number, _) => Scaled.ToText(number, 6)) { Placeholder = placeholder, Shape = Shape.Number };

    /// <summary>An amount of money, exact to a millionth, from 0 to <see cref="Largest"/>.</summary>
    public static Notation<Money> Money { get; } = new(
        (text, _, _) => Numbers.Read(text, out var refusal) is { } number
            ? number is >= 0 and <= Largest && Scaled.ToBase(number, Measures.Money.PerUnit) is { } millionths
                ? new Money(millionths) : Parsed.Not<Money>("an amount from 0 to 1000000000 with at most six decimals")
            : Parsed.Not<Money>(refusal == Numbers.Accepted ? "an amount such as 42.00" : refusal),
        (money, _) => Scaled.InUnits(money.Millionths, Measures.Money.PerUnit)) { Placeholder = "AMOUNT",
            Shape = Shape.Number };

    /// <summary>
    /// A volume: a bare number is millilitres, or fluid ounces where somebody who measures so types it.
    /// </summary>
    public static Notation<Volume> Volume { get; } = new(
        (text, _, terms) =>
        {
            if (Base(text, Unit.Millilitre, terms, out var refusal) is not { } microlitres)
                return Parsed.Not<Volume>(refusal);
            return Measures.Volume.FromMicrolitres(microlitres);
        },
        (volume, terms) => Liquid(volume.Microlitres, terms)) { Placeholder = "ML", Shape = Shape.Number,
            HasUnit = true };

    /// <summary>Volumes with a plus between them: 50 ml + 20 ml.</summary>
    public static Notation<IReadOnlyList<Volume>> Volumes { get; } = new(
        (text, read, terms) =>
        {
            var volumes = new List<Volume>();
            foreach (var part in text.Split('+', StringSplitOptions.TrimEntries))
            {
                var volume = Volume.Read(part, read, terms);
                if (!volume.IsRead)
                    return Parsed.Not<IReadOnlyList<Volume>>(volume.Accepted);
                volumes.Add(volume.Value);
            }

            return volumes;
        },
        (volumes, terms) => string.Join(" + ", volumes.Select(volume => Volume.Write(volume, terms))))
        { Placeholder = "ML", HasUnit = true, Divider = " + " };

    /// <summary>A quantity of something: a bare number is in the unit of what <paramref name="what"/> names.</summary>
    public static Notation<Quantity> Amount(Func<FieldValues, ReadingTerms, Unit> what) => new(
        (text, read, terms) =>
        {
            if (Measurement.Read(text, out var refusal) is not { } measured)
                return Parsed.Not<Quantity>(refusal);
            var unit = measured.Unit ?? what(read, terms);
            return (measured.Unit is null ? Base(text, unit, terms, out refusal)
                : Kept(measured.InBase(unit, out refusal), ref refusal)) is { } found
                ? new Quantity(found, unit) : Parsed.Not<Quantity>(refusal);
        },
        (quantity, terms) => quantity.Unit == Unit.Millilitre && terms.IsTyped ? Liquid(quantity.Base, terms)
            : $"{Scaled.InUnits(quantity.Base, quantity.Unit.BasePerUnit())} {quantity.Unit.Plural()}")
        { Placeholder = "AMOUNT", Shape = Shape.Number, HasUnit = true };

    /// <summary>An area in square inches.</summary>
    public static Notation<Area> SquareInches { get; } = new(
        (text, _, _) => Numbers.Read(text, out var refusal) is { } inches
            ? inches is >= 0.0001m and < 10_000_000 ? Measures.Area.FromSquareInches(inches)
                : Parsed.Not<Area>("square inches, more than 0 and less than 10000000")
            : Parsed.Not<Area>(refusal),
        (area, _) => Scaled.ToText(area.SquareInches, 6)) { Placeholder = "SQIN", Shape = Shape.Number };

    /// <summary>
    /// A quantity of an item in its own unit: grams of a liquid are turned into its volume, and back, where its density
    /// is known.
    /// </summary>
    /// <param name="item">The item; null where it is not known.</param>
    /// <param name="plain">The unit of a bare number where there is no item.</param>
    public static Notation<Quantity> AmountOf(Func<FieldValues, ReadingTerms, Item?> item, Unit plain)
    {
        var amount = Amount((read, terms) => item(read, terms)?.Unit ?? plain);
        return new(
            (text, read, terms) => amount.Read(text, read, terms) is { IsRead: true } found
                ? item(read, terms)?.Converted(found.Value) ?? found.Value : amount.Read(text, read, terms),
            (quantity, terms) => amount.Write(quantity, terms)) { Placeholder = amount.Placeholder,
                Shape = amount.Shape, HasUnit = true };
    }

    /// <summary>An area that may name its unit: 80 sqin, 516.13 cm2; a bare number is square inches.</summary>
    public static Notation<Area> Area { get; } = new(
        (text, _, _) => Measures.Area.Read(text) is { Hundredths: > 0 } area
            ? area
            : Parsed.Not<Area>("an area such as 80 sqin or 516.13 cm2"),
        (area, _) => $"{Scaled.ToText(area.SquareInches, 6)} sqin") { Placeholder = "AREA" };

    /// <summary>A dilution: "1+39".</summary>
    public static Notation<Dilution> Dilution { get; } = new(
        (text, _, _) => Measures.Dilution.TryParse(text, out var dilution, out _)
            ? dilution! : Parsed.Not<Dilution>(Measures.Dilution.AcceptedFor(text)),
        (dilution, _) => dilution.Text) { Placeholder = "DILUTION" };

    /// <summary>A format of film or paper.</summary>
    public static Notation<Format> Format { get; } = new(
        (text, _, terms) => terms.Formats.TryFind(text, out var format)
            ? format!
            : Parsed.Not<Format>($"a format such as {FormatTable.Accepted}"),
        (format, _) => format.Code) { Placeholder = "FORMAT" };

    /// <summary>What is written in a notation of its own.</summary>
    /// <param name="placeholder">What stands for it in help.</param>
    /// <param name="read">Reads it; null when it cannot be read.</param>
    /// <param name="write">Writes it.</param>
    /// <param name="accepted">What is accepted, continuing "accepted is".</param>
    public static Notation<T> Of<T>(string placeholder, Func<string, T?> read, Func<T, string> write, string accepted)
        where T : class => new(
        (text, _, _) => read(text) is { } value ? value : Parsed.Not<T>(accepted),
        (value, _) => write(value)) { Placeholder = placeholder };

    /// <summary>The base units of a text that may name its unit.</summary>
    private static long? Base(string text, Unit unit, ReadingTerms terms, out string refusal)
    {
        if (Measurement.Read(text, out refusal) is not { } measured)
            return null;
        if (measured.Unit is null && unit == Unit.Millilitre && terms is { IsTyped: true, Style.UsesFluidOunces: true })
            measured = measured with { Unit = Unit.Millilitre, Factor = Measurement.MillilitresPerFluidOunce };
        if (measured.Unit is { } written && written != unit)
        {
            refusal =
                "an amount in "
                    + $"{(unit == Unit.Millilitre ? "ml, l or floz" : unit == Unit.Gram ? "g or kg" : unit.Plural())}";
            return null;
        }

        return Kept(measured.InBase(unit, out refusal), ref refusal);
    }

    /// <summary>The base units, if they are what somebody can have: not negative, and not beyond all measure.</summary>
    private static long? Kept(long? found, ref string refusal)
    {
        if (found is null or (>= 0 and <= 1_000_000_000_000))
            return found;
        refusal = "an amount from 0 to 1000000000";
        return null;
    }

    private static string Liquid(long microlitres, ReadingTerms terms) =>
        terms is { IsTyped: true, Style.UsesFluidOunces: true }
            ? $"{Scaled.ToText(microlitres / 1000m / Measurement.MillilitresPerFluidOunce, 6)}floz"
            : Scaled.InUnits(microlitres, 1000);

    private static string Range(decimal least, decimal most, int decimals) =>
        $"a number from {Scaled.ToText(least, 6)} to {Scaled.ToText(most, 6)}" + decimals switch
        {
            0 => " without decimals",
            1 => " with at most one decimal",
            _ => $" with at most {decimals} decimals",
        };
}
