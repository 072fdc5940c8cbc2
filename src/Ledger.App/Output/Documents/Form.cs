using System.Text.Json;

namespace Ledger.App.Output.Documents;

/// <summary>
/// One sort of value: how it stands in JSON and its schema, in the cells of a file, in a table for people, and what it
/// is sorted by.
/// </summary>
internal sealed class Form
{
    private const string Definitions = "#/$defs/";

    /// <summary>A text; none is written as nothing.</summary>
    public static Form Text { get; } = new()
    {
        Write = (json, value, _) => json.WriteStringValue((string)value), Schema = Type("string"),
        Cells = (value, _) => [(string)value], Shown = (value, _) => (string)value,
    };

    /// <summary>A day.</summary>
    public static Form Date { get; } = new()
    {
        Write = (json, value, _) => json.WriteStringValue(Dates.Text((LocalDate)value)),
        Schema = (json, mayBeNull) =>
        {
            Type("string")(json, mayBeNull);
            json.WriteString("format", "date");
        },
        Cells = (value, _) => [Dates.Text((LocalDate)value)], Shown = (value, _) => Dates.Text((LocalDate)value),
    };

    /// <summary>A whole number.</summary>
    public static Form Whole { get; } = new()
    {
        Write = (json, value, _) => json.WriteNumberValue((long)value), Schema = Type("integer"), IsFigure = true,
        Cells = (value, _) => [Scaled.ToText((long)value, 0)], Shown = (value, _) => Scaled.ToText((long)value, 0),
    };

    /// <summary>A number, to the millionth.</summary>
    public static Form Figure { get; } = new()
    {
        Write = (json, value, _) => json.WriteNumberValue(Rounded((decimal)value)), Schema = Type("number"),
        IsFigure = true, Cells = (value, _) => [Scaled.ToText(Rounded((decimal)value), 6)],
        Shown = (value, _) => Scaled.ToText((decimal)value, 2),
    };

    /// <summary>A number of statistics, as finely as it is known.</summary>
    public static Form Chance { get; } = new()
    {
        Write = (json, value, _) => json.WriteNumberValue((double)value), Schema = Type("number"), IsFigure = true,
        Cells = (value, _) => [((double)value).ToString("R", System.Globalization.CultureInfo.InvariantCulture)],
        Shown = (value, _) => ((double)value).ToString("0.####", System.Globalization.CultureInfo.InvariantCulture),
    };

    /// <summary>Yes or no.</summary>
    public static Form Flag { get; } = new()
    {
        Write = (json, value, _) => json.WriteBooleanValue((bool)value), Schema = Type("boolean"),
        Cells = (value, _) => [YesNo(value)], Shown = (value, _) => YesNo(value),
    };

    /// <summary>An amount with its unit.</summary>
    public static Form Quantity { get; } = new()
    {
        Write = (json, value, _) =>
        {
            json.WriteStartObject();
            json.WriteNumber("value", Scaled.Plain(((Amount)value).Value));
            json.WriteString("unit", ((Amount)value).Unit.Name());
            json.WriteEndObject();
        },
        Schema = Reference("quantity"), IsFigure = true, Endings = ["", "Unit"],
        SortKey = value => ((Amount)value).Value,
        Cells = (value, _) => [Scaled.ToText(((Amount)value).Value, 6), ((Amount)value).Unit.Name()],
        Shown = (value, view) => ((Amount)value).ToText(view.Style),
    };

    /// <summary>Money, exact, in the ledger's currency.</summary>
    public static Form Money { get; } = new()
    {
        Write = (json, value, view) =>
        {
            json.WriteStartObject();
            json.WriteString("amount", ((Money)value).ToString());
            json.WriteString("currency", view.Currency);
            json.WriteEndObject();
        },
        Schema = Reference("money"), IsFigure = true, Endings = ["", "Currency"],
        SortKey = value => ((Money)value).Millionths,
        Cells = (value, view) => [((Money)value).ToString(), view.Currency],
        Shown = (value, view) => ((Money)value).Text(view.Style),
    };

    /// <summary>Writes a value into JSON.</summary>
    public required Action<Utf8JsonWriter, object, View> Write { get; init; }

    /// <summary>Writes what a schema says of it; the flag tells whether null is allowed.</summary>
    public required Action<Utf8JsonWriter, bool> Schema { get; init; }

    /// <summary>What stands in the cells of a file: one for each of <see cref="Endings"/>.</summary>
    public required Func<object, View, string[]> Cells { get; init; }

    /// <summary>What a person reads.</summary>
    public required Func<object, View, string> Shown { get; init; }

    /// <summary>What its columns are called, behind its own name.</summary>
    public string[] Endings { get; private init; } = [""];

    /// <summary>Whether it is a figure, which ends at one edge.</summary>
    public bool IsFigure { get; private init; }

    private Func<object, IComparable> SortKey { get; init; } = value => (IComparable)value;

    /// <summary>Compares two values; nothing comes last.</summary>
    public int Compare(object? one, object? other) => (one, other) switch
    {
        (null, null) => 0,
        (null, _) => 1,
        (_, null) => -1,
        (string left, string right) => string.Compare(left, right, StringComparison.OrdinalIgnoreCase),
        _ => SortKey(one).CompareTo(SortKey(other)),
    };

    private static Action<Utf8JsonWriter, bool> Type(string name) => (json, mayBeNull) =>
    {
        if (!mayBeNull)
        {
            json.WriteString("type", name);
            return;
        }

        json.WriteStartArray("type");
        json.WriteStringValue(name);
        json.WriteStringValue("null");
        json.WriteEndArray();
    };

    private static Action<Utf8JsonWriter, bool> Reference(string name) => (json, mayBeNull) =>
    {
        if (!mayBeNull)
        {
            json.WriteString("$ref", Definitions + name);
            return;
        }

        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        json.WriteString("$ref", Definitions + name);
        json.WriteEndObject();
        json.WriteStartObject();
        json.WriteString("type", "null");
        json.WriteEndObject();
        json.WriteEndArray();
    };

    private static decimal Rounded(decimal number) =>
        Scaled.Plain(Math.Round(number, 6, MidpointRounding.AwayFromZero));

    private static string YesNo(object value) => (bool)value ? "yes" : "no";
}

/// <summary>A quantity, or the average of several, which may be a part of a sheet.</summary>
/// <param name="Value">How much, in the unit.</param>
/// <param name="Unit">The unit.</param>
/// <param name="Exact">The quantity itself; null for an average.</param>
internal sealed record Amount(decimal Value, Unit Unit, Quantity? Exact)
{
    public static Amount? Of(Quantity? quantity) => quantity is { } known ? new(known.Value, known.Unit, known) : null;

    public static Amount? Of(Volume? volume) => volume is { } known ? Of(Quantity.Of(known)) : null;

    public string ToText(MeasureStyle style) => Exact?.ToText(style) ?? $"{Scaled.ToText(Value, 2)} {Unit.Plural()}";
}
