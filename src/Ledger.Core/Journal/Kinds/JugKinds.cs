using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Core.Journal.Kinds;

/// <summary>record jug-start, jug_starts.csv: a jug for used solutions.</summary>
internal static class JugStartKind
{
    private static readonly Field<string> Jug = new("jug", Notations.Name("JUG"))
    {
        Help = "what is written on it, such as J3", Example = "J3", IsNeeded = true, IsArgument = true, Width = 10,
        Offer = (_, holdings) => holdings.Jugs.LastOrDefault() is { } last
            ? NextName.After(last.Code, name => holdings.Jug(name) is not null)
            : "J1",
    };

    private static readonly Field<Volume> Size = new("size_ml", Notations.Volume)
    {
        Label = "Holds, ml", Option = "--size", Help = "what it holds when full, such as 20l", Example = "20000",
        IsNeeded = true, IsArgument = true,
        Width = 8,
    };

    private static readonly Field<string> Contents = new("contents", Notations.Line(60))
    {
        Label = "For", Help = "what goes into it: used fixer, developer, stop bath, toner or other waste",
        Example = "used fixer", IsNeeded = true, IsArgument = true, Width = 24,
        Choices = (_, _) => ["used fixer", "used developer", "used stop bath", "used toner", "other waste"],
        Offer = (_, _) => "used fixer",
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<JugStart>
    {
        Name = "jug-start",
        Caution = UsualCautions.Waste,
        File = "jug_starts",
        Title = "New waste jug",
        Purpose = "Starts a jug in which used solution of one kind waits to be handed over.",
        Details =
        [
            "One jug for one kind of waste: only what is like its contents is offered for it. Label it: print "
                + "bottle-label J3. Keep unlike wastes, acid and bleach apart; the maker's safety data sheet and local "
                + "rules govern.",
        ],
        Example = "J3 20l \"used fixer\"",
        Bound = [new(Jug, entry => entry.Jug), new(Size, entry => entry.Size), new(Contents, entry => entry.Contents)],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Jug = values.Of(Jug), Size = values.Of(Size),
            Contents = values.Of(Contents),
        },
    };
}

/// <summary>record jug-filling, jug_fillings.csv: used solution goes into a jug.</summary>
internal static class JugFillingKind
{
    private static readonly Field<string> Jug = new("jug", Notations.Known("JUG"))
    {
        Help = "the jug", Example = "J2", IsNeeded = true, IsArgument = true, Width = 10, Choices = Offered.Jugs,
        Offer = (read, holdings) => Offered.Jugs(read, holdings).FirstOrDefault(),
    };

    private static readonly Field<Volume> Volume = new("volume_ml", Notations.Volume)
    {
        Label = "Volume, ml", Option = "--volume", Help = "how much, such as 1.5l", Example = "500", IsNeeded = true,
        IsArgument = true, Width = 8,
    };

    private static readonly Field<string> What = new("what", Notations.Line(60))
    {
        Help = "what it is, such as first rinse", Example = "first rinse", IsNeeded = true, IsArgument = true,
        Width = 24,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<JugFilling>
    {
        Name = "jug-filling",
        Caution = UsualCautions.Waste,
        File = "jug_fillings",
        Title = "Fill a jug",
        Purpose = "Records used solution that goes into a jug.",
        Details = ["A bath that is discarded names its jug itself: record discard BATH --jug JUG."],
        Example = "J2 500ml \"first rinse\"",
        Bound = [new(Jug, entry => entry.Jug), new(Volume, entry => entry.Volume), new(What, entry => entry.What)],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Jug = values.Of(Jug), Volume = values.Of(Volume),
            What = values.Of(What),
        },
    };
}

/// <summary>record jug-handover, jug_handovers.csv: a jug is handed over.</summary>
internal static class JugHandoverKind
{
    private static readonly Field<string> Jug = new("jug", Notations.Known("JUG"))
    {
        Help = "the jug", Example = "J2", IsNeeded = true, IsArgument = true, Width = 10, Choices = Offered.Jugs,
        Offer = (read, holdings) => Offered.Jugs(read, holdings).FirstOrDefault(),
    };

    private static readonly Field<string> To = new("to", Notations.Line(200))
    {
        Help = "the place that took it", Example = "collection point", IsNeeded = true, IsArgument = true, Width = 40,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<JugHandover>
    {
        Name = "jug-handover",
        Caution = UsualCautions.Waste,
        File = "jug_handovers",
        Title = "Hand over a jug",
        Purpose = "Records that a jug is handed over, and to whom.",
        Details = ["The maker's safety data sheet and your local rules say which place may take it."],
        Example = "J2 \"collection point\"",
        Bound = [new(Jug, entry => entry.Jug), new(To, entry => entry.To)],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Jug = values.Of(Jug), To = values.Of(To),
        },
    };
}
