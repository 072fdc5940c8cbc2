using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Kinds;

/// <summary>record format, formats.csv: a format of the user's own, or another area for a known one.</summary>
internal static class FormatDefinitionKind
{
    private static readonly Field<Format> Code = new("format", new(
        (text, _, terms) => terms.Formats.TryFind(text, out var known) ? known
            : Format.CodeOf(text) is { } code ? new Format(code, Measures.Area.Unit80)
                : Parsed.Not<Format>($"a name: {Format.AcceptedName}"),
        (format, _) => format.Code) { Placeholder = "FORMAT" })
    {
        Help = "its name, such as 220 or postcard", Example = "220", IsNeeded = true, IsArgument = true,
    };

    private static readonly Field<Unit> Unit = new("unit", Words.FilmUnits)
    {
        Label = "counted in", Help = "sheet or roll; otherwise as the format is known, or sheet", Example = "roll",
        Width = 6,
        Choices = (_, _) => Words.FilmUnits.Words,
        Offer = (read, _) => read.Find(Code)?.Unit == Measures.Unit.Roll ? "roll" : "sheet",
    };

    private static readonly Field<Area> Area = new("area", Notations.Area)
    {
        Label = "Area of one", Help = "the area of one, in square inches or square centimetres: 80 sqin, 516.13 cm2",
        Example = "160 sqin",
        IsNeeded = true, Width = 16,
        Offer = (read, holdings) => read.Find(Code) is { } code && holdings.Formats.TryFind(code.Code, out var known)
            ? $"{Scaled.ToText(known.Area.SquareInches, 6)} sqin" : null,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<FormatDefinition>
    {
        Name = "format",
        File = "formats",
        Title = "Format",
        Purpose = "Defines a format of your own, or another area for a known one.",
        Details =
        [
            "A roll of 120 counts as 80 square inches by convention only. Sizes such as 7x17in and 100x125mm need no "
                + "definition: they have the area that they say. Sessions of the past keep the area they were recorded "
                + "with.",
        ],
        Example = "220 --unit roll --area \"160 sqin\"",
        IsDated = false,
        NamedBy = Code,
        IsReplaceable = true,
        Bound = [new(Code, entry => entry.Format), new(Area, entry => entry.Format.Area),
        new(Unit, entry => entry.Format.Unit)],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note,
            Format = new(values.Of(Code).Code, values.Of(Area), values.Maybe(Unit) ?? values.Of(Code).Unit),
        },
    };
}
