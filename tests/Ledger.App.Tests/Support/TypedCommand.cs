namespace Ledger.App.Tests.Support;

/// <summary>An entry as somebody would type it on the command line: the words of its description.</summary>
internal static class TypedCommand
{
    /// <summary>The words of an entry. Quantities are written with their units, so no item needs to be known.</summary>
    public static string[] Of(Entry entry)
    {
        var kind = EntryKinds.Of(entry);
        var text = EntryWriting.Write(kind, entry,
            new() { Today = new LocalDate(2026, 3, 15), ItemOf = _ => null, Formats = new FormatTable() });
        return
        [
            "record", kind.Name,
            .. kind.Fields.Where(field => field.IsArgument && text[field].Length > 0)
                .SelectMany(field => Words(field, text[field])),
            .. kind.AllFields.Where(field => !field.IsArgument && text[field].Length > 0)
                .SelectMany(field => Option(field, text[field])),
            .. text.Lines.SelectMany(line => new[] { kind.Line!.Option, LinePhrase.Write(kind.Line, line) }),
        ];
    }

    private static string[] Words(Field field, string text) =>
        field.Notation.Divider is { } divider ? text.Split(divider, StringSplitOptions.RemoveEmptyEntries) : [text];

    private static string[] Option(Field field, string text) =>
        field.Notation.Shape == Shape.Tick && !field.IsNeeded
            ? text == "yes" ? [field.Option] : []
            : [field.Option, text];
}
