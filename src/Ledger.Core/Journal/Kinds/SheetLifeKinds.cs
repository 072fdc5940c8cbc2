using Ledger.Core.Film;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Sessions;

namespace Ledger.Core.Journal.Kinds;

/// <summary>What everything that happens to developed sheets names.</summary>
internal static class SheetLifeFields
{
    /// <summary>The sheets it is about.</summary>
    public static Field<IReadOnlyList<string>> Sheets { get; } = new("sheets", Notations.Names("SHEET"))
    {
        Help = "the sheets: negatives such as 2025-014, or sheets such as #12; several with blanks between",
            Example = "2025-014 2025-015",
        IsNeeded = true, IsArgument = true, Width = 44,
    };
}

/// <summary>record fate, fates.csv: sheets have another fate from a day on.</summary>
internal static class FateKind
{
    private static readonly Field<Fate> Becomes = new("fate", Words.LaterFates)
    {
        Label = "Is now a", Help = "what they are from that day on: reject, negative, keeper, test, practice",
            Example = "reject", IsNeeded = true,
        Width = 10, Choices = (_, _) => Words.LaterFates.Words,
    };

    private static readonly Field<RejectCause> Cause = new("cause", Words.Causes)
    {
        Help = "what spoiled a reject: under-fixed, scratch, fogged", Example = "under-fixed", Width = 18,
            Choices = (_, _) => Words.Causes.Words,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<FateChange>
    {
        Name = "fate",
        File = "fates",
        Title = "Another fate",
        Purpose = "Developed sheets have another fate from a day on: a negative found spoiled is a reject, and one "
            + "that was refixed or cleaned is good again.",
        Details =
        [
            "Numbers stay what they are. A keeper that is one no longer becomes a negative again.",
            "`show costs` counts sheets by what they are now; with --fates then by what they were at the end of the "
            + "period.",
        ],
        Example = "2025-014 --fate reject --cause under-fixed",
        Bound = [new(SheetLifeFields.Sheets, entry => entry.Sheets), new(Becomes, entry => entry.Fate),
            new(Cause, entry => entry.Cause)],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Sheets = values.Of(SheetLifeFields.Sheets),
                Fate = values.Of(Becomes),
            Cause = values.Maybe(Cause),
        },
    };
}

/// <summary>record sheet-note, sheet_notes.csv: something was done to developed sheets, or found out about
/// them.</summary>
internal static class SheetNoteKind
{
    private static readonly Field<SheetWork> What = new("what", Words.SheetWorks)
    {
        Help = "what was done or tested: inspected, residual silver test, residual hypo test, refixed, rewashed, "
            + "spotted, toned, other",
        Example = "refixed", IsNeeded = true, Width = 20, Choices = (_, _) => Words.SheetWorks.Words,
    };

    private static readonly Field<string> Result = new("result", Notations.Line(200))
    {
        Help = "what it showed, or how it was done: no stain, 0.012 g/m2, 5 min in F9", Example = "5 min in F9",
            Width = 40,
        Choices = (_, _) => ["no stain", "faint stain", "stain"],
    };

    private static readonly Field<bool> Passed = new("passed", Words.YesOrNo)
    {
        Help = "whether a test or a look was passed; nothing where nothing was tested", Example = "", Width = 4,
            Choices = (_, _) => ["yes", "no"],
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<SheetNote>
    {
        Name = "sheet-note",
        File = "sheet_notes",
        Title = "Note on sheets",
        Purpose = "Something was done to developed sheets or found out about them: a residual test, refixing, "
            + "spotting, toning.",
        Details =
        [
            "The results of a check list are recorded so, sheet by sheet. A figure of hypo above the setting "
            + "residual-hypo-limit has failed, whatever else is said.",
            "Toners can be poisonous and fixer gives off fumes: air the room, wear gloves, and follow the maker's "
            + "safety data sheet.",
        ],
        Example = "2025-014 --what refixed --result \"5 min in F9\"",
        Bound =
        [
            new(SheetLifeFields.Sheets, entry => entry.Sheets), new(What, entry => entry.What),
                new(Result, entry => Given.Text(entry.Result)),
            new(Passed, entry => entry.HasPassed),
        ],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Sheets = values.Of(SheetLifeFields.Sheets),
                What = values.Of(What),
            Result = values.Find(Result) ?? "", HasPassed = values.Maybe(Passed),
        },
    };
}

/// <summary>record filing, filings.csv: where developed sheets are kept.</summary>
internal static class FilingKind
{
    private static readonly Field<string> Place = new("place", Notations.Line(200))
    {
        Help = "where they are kept: sleeve, page, binder, box", Example = "binder B, page 12", IsNeeded = true,
            Width = 40,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<Filing>
    {
        Name = "filing",
        File = "filings",
        Title = "Filing place",
        Purpose = "Where developed sheets are kept: a sleeve, a page, a box. The last place that was said holds.",
        Example = "2025-014 2025-015 --place \"binder B, page 12\"",
        Bound = [new(SheetLifeFields.Sheets, entry => entry.Sheets), new(Place, entry => entry.Place)],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Sheets = values.Of(SheetLifeFields.Sheets),
                Place = values.Of(Place),
        },
    };
}
