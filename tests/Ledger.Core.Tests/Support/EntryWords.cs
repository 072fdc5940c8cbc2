namespace Ledger.Core.Tests.Support;

/// <summary>
/// Entries as one line of text, for tables: "delivery item=fen80 packs=2 price=162". The names are those of the fields
/// in the kind's description, "line" is a whole line as a command takes it, and an underscore stands for a blank. What
/// is not said is valid; the date is that of <see cref="Some.Today"/>, and "typed=yes" says that somebody typed it.
/// </summary>
internal static class EntryWords
{
    /// <summary>
    /// What an entry says where it is not said otherwise; what a line has stands in those of its kind that are said by
    /// their fields.
    /// </summary>
    private static readonly Dictionary<string, string> _unsaid = new()
    {
        ["item"] = "item=ortho16 name=Mirrin_Ortho_16 kind=film unit=sheet pack=10",
        ["format"] = "format=postcard area=20_sqin unit=sheet",
        ["storage"] = "container=fen80/1 to=fridge",
        ["exposure-index"] = "container=fen80/1 exposure_index=64",
        ["delivery"] = "packs=1 price=0",
        ["order"] = "order=A1",
        ["order-change"] = "order=A1",
        ["order-cancellation"] = "order=A1 reason=too_late",
        ["price-rise"] = "from=2026-04-24 percent=6",
        ["bath"] = "bath=F1 item=fix working_ml=1500",
        ["session"] = "session=S1 process=pm item=fen80 sheets=1",
        ["discard"] = "reason=spent",
        ["count"] = "reason=dregs",
        ["undo"] = "reason=mistaken",
        ["jug-start"] = "jug=J1 size_ml=20000 contents=used_fixer",
        ["jug-filling"] = "jug=J1 volume_ml=500",
        ["holder"] = "holder=E01 format=8x10",
        ["load"] = "sides= from=fen80",
        ["exposure"] = "sides=",
        ["unload"] = "from=",
        ["cleaning"] = "holders=",
        ["service"] = "sides= reason=leaks",
    };

    private static readonly ReadingTerms _terms = new() { Today = Some.Today, Formats = new(), ItemOf = _ => null };

    public static Entry Read(string text)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var kind = EntryKinds.Named(words[0]) ?? throw new FormatException($"no entry is called {words[0]}");
        var said = Said(words.Skip(1));
        var lines = said["line"].Select(phrase => Phrase(kind.Line!, phrase)).ToList();
        var one = said.Where(word => word.Key is not ("line" or "typed")
            && kind.AllFields.All(field => field.Name != word.Key)).ToList();
        if (one.FirstOrDefault(word => kind.Line?.Fields.Any(field => field.Name == word.Key) != true) is { } unknown)
            throw new FormatException($"nothing reads the field {unknown.Key}");
        var unsaid = Said(_unsaid.GetValueOrDefault(kind.Name, "").Split(' ', StringSplitOptions.RemoveEmptyEntries));
        if (one.Count > 0)
            lines.Add(Values(kind.Line!.Fields, field => Found(field, said, unsaid)));
        var values = Values(kind.AllFields, field => Found(field, said, unsaid));
        if (!values.Has(CommonFields.Date))
            values.Put(CommonFields.Date, Some.Today);
        if (!values.Has(CommonFields.Reference))
            values.Put(CommonFields.Reference, Some.Key());
        values.Lines = [.. lines.Select(line => kind.Line!.Make(line))];
        return kind.Make(values) with { IsTyped = said.Contains("typed") };
    }

    private static ILookup<string, string> Said(IEnumerable<string> words) =>
        words.Select(word => word.Split('=', 2)).ToLookup(word => word[0], word => word[1].Replace('_', ' '));

    private static string? Found(Field field, ILookup<string, string> said, ILookup<string, string> unsaid) =>
        said[field.Name].SingleOrDefault() ?? unsaid[field.Name].SingleOrDefault();

    private static FieldValues Phrase(LineKind kind, string phrase)
    {
        var problems = new List<FieldProblem>();
        var text = LinePhrase.Read(kind, phrase, _terms, problems);
        return problems.Count == 0 ? Values(kind.Fields, field => text[field] is { Length: > 0 } found ? found : null)
            : throw new FormatException($"nothing reads \"{problems[0].Found}\" in \"{phrase}\"");
    }

    private static FieldValues Values(IEnumerable<Field> fields, Func<Field, string?> text)
    {
        var values = new FieldValues();
        foreach (var field in fields)
            if (text(field) is { } found)
                values.Put(field, field.Notation.ReadBoxed(found, values, _terms) is { IsRead: true, Value: var value }
                    ? value
                    : Unbounded(field, found));
        return values;
    }

    /// <summary>
    /// What no door lets through, so that the rules can refuse it: beyond all bounds, or nothing where something must
    /// be.
    /// </summary>
    private static object Unbounded(Field field, string text) => field switch
    {
        Field<string> => text,
        Field<IReadOnlyList<string>> when text.Length == 0 => Array.Empty<string>(),
        Field<int> => int.Parse(text, CultureInfo.InvariantCulture),
        Field<decimal> => Number(text),
        Field<Money> => Money.Of(Number(text)),
        Field<Area> => Area.FromSquareInches(Number(text)),
        Field<Quantity> => Negative(text),
        Field<Format> => new Format(text, Area.Unit80),
        Field<Unit> => Units.Named(text)!.Value,
        _ => throw new FormatException($"{field.Name} cannot be \"{text}\""),
    };

    private static decimal Number(string text) => decimal.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>"-5sheet"</summary>
    private static Quantity Negative(string text)
    {
        var digits = text.TakeWhile(c => !char.IsAsciiLetter(c)).Count();
        return Quantity.Of(Number(text[..digits]), Units.Named(text[digits..])!.Value);
    }
}
