using Ledger.Core.Film;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Core.Journal.Kinds;

/// <summary>record session, sessions.csv: a session of developing, a line for each film, group and fate.</summary>
internal static class SessionKind
{
    private static readonly Field<string> Session = new("session", Notations.Name("SESSION"))
    {
        Help = "a name of its own, such as S23", Example = "S23", IsNeeded = true, IsArgument = true, Width = 8,
    };

    private static readonly Field<string> Process = new("process", Notations.Known("PROCESS"))
    {
        Help = "how the film was developed", Example = "tray", IsNeeded = true, Width = 16, Choices = Offered.Processes,
        Offer = (read, holdings) => Offered.Processes(read, holdings).FirstOrDefault(),
    };

    private static readonly Field<string> Bath = new("bath", Notations.Known("BATHS"))
    {
        Help = "the bath the film went through, the first of a pair; or one of each item: F9, ST2; otherwise the only "
            + "one that fits", Example = "F4",
        Width = 12,
        Choices = (read, holdings) => ProcessOf(read, holdings) is { } process
            ? new SessionBaths(holdings, holdings.AsOf).Namings(process)
            : [],
        Offer = (read, holdings) => ProcessOf(read, holdings) is { } process
            ? new SessionBaths(holdings, holdings.AsOf).Known(process)
            : null,
    };

    private static readonly Field<string> Plan = new("plan", Notations.Known("PLAN"))
    {
        Label = "From plan", Option = "--from-plan", Help = "the plan that was carried out; it is then no longer open",
        Example = "spring", Width = 14,
        Choices = (_, holdings) => holdings.Plans.Where(plan => !plan.IsTrip).Select(plan => plan.Name),
    };

    private static readonly Field<IReadOnlyList<string>> DrawFirst = new("draw_first", Notations.Names("BOX"))
    {
        Help = "boxes and bottles to draw from before others of the same item, in this order", Example = "", Width = 30,
        Choices = Offered.Clear,
    };

    private static readonly Field<int> Sheets = new("sheets", Notations.Whole(1, 1000))
    {
        Help = "how many sheets or rolls", Example = "4", IsNeeded = true, Width = 4,
    };

    private static readonly Field<string> Film = LineFields.Film, Group = LineFields.Group;

    private static readonly Field<Volume> Developer = new("developer_ml", Notations.Volume)
    {
        Label = "dev. ml",
        Help = "the concentrate measured out; without any on all lines, what the process asks for each line",
        Example = "25", Width = 6,
        Keyword = "developer", MayLackKeyword = true,
    };

    private static readonly Field<IReadOnlyList<Volume>> OtherParts = new("other_parts_ml", Notations.Volumes)
    {
        Label = "part B ml",
        Help = "what was measured out of part B, and of a third part with a plus between; otherwise what the dilution "
            + "asks beside the developer",
        Example = "", Width = 8, Keyword = "and",
    };

    private static readonly Field<Quantity> Weighed = new("developer_g", Notations.AmountOf((_, _) => null, Unit.Gram))
    {
        Label = "dev. g", Help = "the same where it was weighed, in grams", Example = "", Width = 6,
        Keyword = "weighed", MayLackKeyword = true,
    };

    private static readonly Field<Fate> Became = new("fate", Words.Fates)
    {
        Label = "became", Help = "what became of the sheets; otherwise a negative", Example = "negative", Width = 9,
        Keyword = "fate", MayLackKeyword = true,
        Choices = (_, _) => Words.Fates.Words, Offer = (_, _) => Words.Fates.Words[0],
    };

    private static readonly Field<RejectCause> Cause = new("cause", Words.Causes)
    {
        Label = "spoiled by", Help = "what spoiled a reject", Example = "", Width = 16, Keyword = "cause",
        MayLackKeyword = true,
        Choices = (_, _) => Words.Causes.Words,
    };

    private static readonly Field<string> Box = LineFields.Box;

    private static readonly Field<string> From = new("from", new(
        // A box that is named whole begins with its film; only then could a film's own name be taken for the word.
        (text, read, _) => text.StartsWith("exposed ", StringComparison.OrdinalIgnoreCase)
            && read.Find(Film) is { } film && !text.StartsWith($"{film} ", StringComparison.OrdinalIgnoreCase)
            ? ExposedBox.CodeOf(film, text["exposed ".Length..].Trim())
            : text.Length <= 500 ? text : Parsed.Not<string>("names of at most 500 characters"),
        (text, _) => text) { Placeholder = "SHEETS", Shape = Shape.Choice })
    {
        Help = "known sheets: sides E07-1, E07-2, a box of exposed sheets fen80 N, or by number #12; nothing for "
            + "sheets that are only counted",
        Example = "", Width = 24, Keyword = "from",
        Choices = (read, holdings) => Offered.Exposed(holdings, read.Find(Film), read.Find(Group)),
    };

    private static readonly Field<string> SheetNote = LineFields.Note;

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<SessionLog>
    {
        Name = "session",
        Caution = UsualCautions.Handling,
        File = "sessions",
        Title = "Session",
        Purpose = "Records a developing session: sheets, developer, supplies, and the area through the bath.",
        Details =
        [
            "Sheets leave their boxes, developer and supplies are used up, and the area passes through the bath. "
                + "Without developer on all lines, each line takes what the process asks for its area.",
        ],
        Example =
            "S23 --process film --bath F4 --sheets \"2 fen80 N keeper 25ml from E01\" --sheets \"1 fen80 N reject dust "
                + "from E02-1\"",
        NamedBy = Session,
        Bound =
        [
            new(Session, entry => entry.Session), new(Process, entry => entry.Process), new(Bath, entry => entry.Bath),
            new(Plan, entry => entry.Plan),
            new(DrawFirst, entry => Given.Names(entry.DrawFirst)),
            new(SharedFields.BookDifference, entry => Given.Yes(entry.BooksDifference)),
        ],
        Line = new LineKind<SessionLine>
        {
            Name = "sheets",
            Help = "what was developed, once for each film, group and fate: how many, the film, the group, the "
                + "developer, what became of them",
            Bound =
            [
                new(Sheets, line => line.Sheets), new(Film, line => line.Item),
                new(Became, line => line.Fate == Fate.Negative ? null : line.Fate),
                new(Cause, line => line.Cause), new(Developer, line => line.Developer),
                new(OtherParts, line => line.OtherParts.Count == 0 ? null : line.OtherParts),
                new(Weighed, line => line.DeveloperWeight),
                new(Group, line => Given.Text(line.Group)), new(Box, line => line.Container),
                new(From, line => line.From),
                new(SheetNote, line => Given.Text(line.Note)),
            ],
            With = values => new()
            {
                Sheets = values.Of(Sheets), Item = values.Of(Film), Fate = values.Of(Became),
                Cause = values.Maybe(Cause),
                Developer = values.Maybe(Developer), OtherParts = values.Find(OtherParts) ?? [],
                DeveloperWeight = values.Maybe(Weighed), Group = values.Find(Group) ?? "",
                Container = values.Find(Box), From = values.Find(From), Note = values.Find(SheetNote) ?? "",
            },
        },
        Lines = entry => entry.Lines,
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Session = values.Of(Session),
            Process = values.Of(Process),
            Lines = values.LinesOf<SessionLine>(), Bath = values.Find(Bath), Plan = values.Find(Plan),
            DrawFirst = values.Find(DrawFirst) ?? [],
            BooksDifference = values.Of(SharedFields.BookDifference),
        },
    };

    private static Process? ProcessOf(FieldValues read, Holdings holdings) =>
        read.Find(Process) is { } name ? holdings.Process(name) : null;
}

/// <summary>What lines of film and of paper share.</summary>
internal static class LineFields
{
    /// <summary>The film.</summary>
    public static Field<string> Film { get; } = new("item", Notations.Known("FILM"))
    {
        Label = "Film", Help = "the film", Example = "fen80", IsNeeded = true, Width = 11, Choices = Offered.Films,
    };

    /// <summary>How it is developed.</summary>
    public static Field<string> Group { get; } = new("group", Notations.Line(60))
    {
        Help = "the development group: N, N+1, N-1", Example = "N", Width = 4, Keyword = "group", MayLackKeyword = true,
        Choices = Offered.Groups,
        Offer = (_, _) => Exposure.Normal,
    };

    /// <summary>
    /// The box to draw from; its code holds a stroke, which tells it from a holder's side where both follow "from".
    /// </summary>
    public static Field<string> Box { get; } = new("container", new(
        (text, _, _) => text.Contains('/', StringComparison.Ordinal)
            ? text
            : Parsed.Not<string>("the code of a box, such as fen80/3"),
        (text, _) => text) { Placeholder = "BOX", Shape = Shape.Choice })
    {
        Label = "box", Help = "the box to draw from, such as fen80/3; otherwise the one used first", Example = "",
        Width = 14, Keyword = "from",
        Choices = (read, holdings) => read.Find(Film) is { } film
            ? holdings.ContainersOf(film).Select(box => box.Code)
            : Offered.Boxes(read, holdings),
    };

    /// <summary>What there is to say of the line.</summary>
    public static Field<string> Note { get; } = new("note", Notations.Line(10_000))
    {
        Help = "a note to these sheets", Example = "", Width = 40, Keyword = ":",
    };
}

/// <summary>record print-session, prints.csv: a session of printing, a line for each paper and purpose.</summary>
internal static class PrintSessionKind
{
    private static readonly Field<string> Session = new("session", Notations.Name("SESSION"))
    {
        Help = "a name of its own, such as P12", Example = "P12", IsNeeded = true, IsArgument = true, Width = 8,
    };

    private static readonly Field<string> Bath = new("bath", Notations.Known("BATH"))
    {
        Label = "Fixer", Help = "the fixer for paper, the first of a pair; not needed while there is only one",
        Example = "PF1", Width = 10,
        Choices = (_, holdings) => holdings.WorkingBaths
            .Where(bath => bath is { Material: Baths.BathMaterial.Paper, Role: Stock.ItemRole.Fixer, Suspicion: null })
                .Select(bath => bath.Code),
    };

    private static readonly Field<IReadOnlyList<string>> Negatives = new("negatives", Notations.Names("NEGATIVE"))
    {
        Help = "the negatives that were printed, such as 2025-014, or sheets such as #12; several with blanks between",
        Example = "2025-014", Width = 34,
    };

    private static readonly Field<int> Sheets = new("sheets", Notations.Whole(0, 1000))
    {
        Help = "how many sheets left the box, whole or to be cut; 0 when strips come from a sheet that was cut before",
        Example = "3", IsArgument = true, Width = 5,
    };

    private static readonly Field<string> Paper = new("item", Notations.Known("PAPER"))
    {
        Label = "Paper", Help = "the paper", Example = "fibre-vc", IsNeeded = true, Width = 16,
        Choices = Offered.Papers,
        Offer = (read, holdings) => Offered.Papers(read, holdings).FirstOrDefault(),
    };

    private static readonly Field<PrintPurpose> Purpose = new("purpose", Words.Purposes)
    {
        Help = "final, work or strip; otherwise final", Example = "final", Width = 8, Keyword = "purpose",
        MayLackKeyword = true,
        Choices = (_, _) => Words.Purposes.Words,
    };

    private static readonly Field<int> Strips = new("strips", Notations.Whole(0, 1000))
    {
        Help = "how many strips went through the baths; none when the sheets did whole", Example = "", Width = 5,
        Keyword = "strips", MayLackKeyword = true,
    };

    private static readonly Field<int> PerSheet = new("strips_per_sheet", Notations.Whole(2, 100))
    {
        Label = "of", Help = "into how many strips a sheet is cut; otherwise 4", Example = "", Width = 4,
        Keyword = "of",
    };

    private static readonly Field<string> SheetNote = LineFields.Note;

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<PrintSession>
    {
        Name = "print-session",
        Caution = UsualCautions.Handling,
        File = "prints",
        Title = "Print session",
        Purpose = "Records a print session: paper and test strips through the baths for paper.",
        Details =
        [
            "Paper never goes through a bath for film. What a litre of fixer can fix depends on the paper and on how "
                + "long the prints are to last: each basis is a setting of the fixer.",
        ],
        Example = "P12 --negatives 2025-014 --sheets \"3 fibre-vc final\" --sheets \"1 fibre-vc strip 3 of 4\"",
        NamedBy = Session,
        Bound =
        [
            new(Session, entry => entry.Session), new(Bath, entry => entry.Bath),
            new(Negatives, entry => Given.Names(entry.Negatives)),
        ],
        Line = new LineKind<PrintLine>
        {
            Name = "sheets",
            Help = "what was printed, once for each paper and purpose: how many sheets, the paper, final, work or "
                + "strip, the strips",
            Bound =
            [
                new(Sheets, line => line.Sheets), new(Paper, line => line.Item),
                new(Purpose, line => line.Purpose == PrintPurpose.Final ? null : line.Purpose),
                new(Strips, line => line.Strips == 0 ? null : line.Strips),
                new(PerSheet, line => line.StripsPerSheet == 4 ? null : line.StripsPerSheet),
                new(LineFields.Box, line => line.Container),
                new(SheetNote, line => Given.Text(line.Note)),
            ],
            With = values => new()
            {
                Sheets = values.Of(Sheets), Item = values.Of(Paper), Purpose = values.Of(Purpose),
                Strips = values.Of(Strips),
                StripsPerSheet = values.Maybe(PerSheet) ?? 4, Container = values.Find(LineFields.Box),
                Note = values.Find(SheetNote) ?? "",
            },
        },
        Lines = entry => entry.Lines,
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Session = values.Of(Session),
            Bath = values.Find(Bath), Negatives = values.Find(Negatives) ?? [],
            Lines = values.LinesOf<PrintLine>(),
        },
    };
}

/// <summary>record keeper, keepers.csv: a negative turns out to be worth printing.</summary>
internal static class KeeperKind
{
    private static readonly Field<string> Negative = new("negative", Notations.Name("NEGATIVE"))
    {
        Help = "the negative's number, such as 2025-014, or its sheet's, such as #12", Example = "2025-014",
        IsNeeded = true, IsArgument = true, Width = 14,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<KeeperNaming>
    {
        Name = "keeper",
        File = "keepers",
        Title = "Keeper",
        Purpose = "Names a negative a keeper: worth printing.",
        Example = "2025-001",
        Bound = [new(Negative, entry => entry.Negative)],
        With = values => new() { Key = values.Key, Date = values.Date, Note = values.Note,
        Negative = values.Of(Negative) },
    };
}
