using System.Collections;
using System.Reflection;
using CsCheck;

namespace Ledger.Core.Tests.Journal.Kinds;

/// <summary>
/// Entries of every kind as they could be said, made from their descriptions alone; and what an entry holds, property
/// by property.
/// </summary>
internal static class Said
{
    private static readonly string[] Texts =
    [
        "1", "2", "7", "25", "400", "0.5", "12.25", "3.125", "0.000001", "99.95", "1000000000",
        "N", "N-1", "fen80", "syrup", "gloves", "F4", "a/1", "small-1", "small-1 small-2",
        "E07-2, E08", "#12", "a note: with signs, \"quotes\" and é", "1+4", "1+49", "1+1+98",
        "8x10", "13x18cm", "120", "25ml", "1.5l", "30g", "12 sheets", "3 rolls", "80 sqin",
        "516.13 cm2", "2026-03-15", "2024-02-29", "09-15..10-15", "A/B", "1/2/3/4/5/6", "9/",
        "11 N-1=9 N+1=14", "4x5=600 11x14=2000", "1600 maker's; 1000 strict", "eur", "floz",
        "sessions:S16", "exposed N-1", "57", "two words", "price=12.50; note=a b", "2.fate=reject", "3=", "always",
    ];

    /// <summary>What the ledger of these entries knows.</summary>
    public static ReadingTerms Terms { get; } = new()
    {
        Today = new(2026, 3, 15),
        Formats = new(),
        ItemOf = code => code switch
        {
            "fen80" => new Item { Code = code, Name = code, Kind = ItemKind.Film, Unit = Unit.Sheet,
                Pack = new(25, Unit.Sheet) },
            "syrup" => new Item { Code = code, Name = code, Kind = ItemKind.Chemical, Unit = Unit.Millilitre,
                Pack = new(1_000_000, Unit.Millilitre) },
            "gloves" => new Item { Code = code, Name = code, Kind = ItemKind.Supply, Unit = Unit.Piece,
                Pack = new(100, Unit.Piece) },
            _ => null,
        },
    };

    /// <summary>Random texts of an entry: each field says something that it accepts, or nothing where it may.</summary>
    public static Gen<EntryText> Text(EntryKind kind) => Gen.Select(
        Gen.Int[0, 1_000_000].Array[kind.AllFields.Count],
        Gen.Int[0, 1_000_000].Array[12].Array[kind.Line is null ? 0 : 1, kind.Line is null ? 0 : 3],
        (choices, lines) =>
        {
            var text = Text(kind.AllFields, choices);
            foreach (var line in lines)
                text.Lines.Add(Text(kind.Line!.Fields, line));
            return text;
        });

    /// <summary>
    /// Every value that an object of the ledger holds, by the path of its properties; lists count by what is in them.
    /// </summary>
    public static IEnumerable<(string Path, string Value)> Values(object? value, string path = "")
    {
        if (value is IEnumerable list and not string)
        {
            var items = list.Cast<object>().ToList();
            return [($"{path}#", $"{items.Count}"), .. items.SelectMany(item => Values(item, path))];
        }

        if (value is null || value.GetType().Assembly != typeof(Entry).Assembly || value.GetType().IsEnum)
            return [(path, string.Create(CultureInfo.InvariantCulture, $"{value}"))];
        return value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(property => property.GetIndexParameters().Length == 0
                && property.PropertyType.Namespace != "Ledger.Core.Costing")
            .SelectMany(property => Values(property.GetValue(value), $"{path}.{property.Name}"));
    }

    /// <summary>What an entry holds, to be compared: two entries with the same are the same.</summary>
    public static string Whole(Entry entry) =>
        string.Join('\n', Values(entry).Select(value => $"{value.Path} = {value.Value}").Prepend(entry.GetType().Name));

    private static EntryText Text(IReadOnlyList<Field> fields, int[] choices)
    {
        var (text, read) = (new EntryText(), new FieldValues());
        for (var i = 0; i < fields.Count; i++)
            if (Accepted(fields[i], choices[i % choices.Length] + i, read) is var (said, value))
            {
                text[fields[i]] = said;
                read.Put(fields[i], value);
            }

        return text;
    }

    private static (string Text, object Value)? Accepted(Field field, int choice, FieldValues read)
    {
        if (!field.IsNeeded && choice % 5 == 0)
            return null;
        string[] candidates = [.. field.Notation.Words, .. Texts,
            .. field.Example.Length > 0 ? [field.Example] : Array.Empty<string>()];
        foreach (var text in candidates.Select((text, i) => (text, Order: (choice + 1L) * (i + 1) % 10_007))
            .OrderBy(one => one.Order).Select(one => one.text))
            if (field.Notation.ReadBoxed(text, read, Terms) is { IsRead: true } parsed)
                return (text, parsed.Value);
        return null;
    }
}
