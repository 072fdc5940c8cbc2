using Ledger.Core.Journal.Entries;
using Ledger.Core.Keeping;
using Ledger.Core.Sessions;

namespace Ledger.Core.Journal.Kinds;

/// <summary>What everything that is learned about a bath names.</summary>
internal static class BathNoteFields
{
    /// <summary>The bath it is about.</summary>
    public static Field<string> Bath { get; } = new("bath", Notations.Known("BATH"))
    {
        Help = "the bath it is about", Example = "F4", IsNeeded = true, IsArgument = true, Width = 10,
        Choices = Offered.Baths,
        Offer = (read, holdings) => Offered.Baths(read, holdings).FirstOrDefault(),
    };
}

/// <summary>record observation, observations.csv: something was seen or smelled at a bath.</summary>
internal static class ObservationKind
{
    private static readonly Field<string> Sign = new("sign", Notations.Line(200))
    {
        Help = "what it was: yellow, specks, smell", Example = "yellow, with specks", IsNeeded = true,
        IsArgument = true, Width = 24,
        Choices = (_, _) => ["yellow", "specks", "white precipitate", "smell"],
    };

    private static readonly Field<bool> StillUsed = new("still_used", Notations.YesNo)
    {
        Help = "the bath is used on; otherwise it is exhausted", Example = "no", Width = 4,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<BathObservation>
    {
        Name = "observation",
        Caution = UsualCautions.Handling,
        File = "observations",
        Title = "Seen at a bath",
        Purpose = "Records what was seen or smelled at a bath; it is then exhausted unless you say that it is used on.",
        Details = ["The bath stays where it is until it is discarded."],
        Example = "F4 \"yellow, with specks\"",
        Bound =
        [
            new(BathNoteFields.Bath, entry => entry.Bath), new(Sign, entry => entry.Sign),
            new(StillUsed, entry => Given.Yes(!entry.EndsUse)),
        ],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Bath = values.Of(BathNoteFields.Bath),
            Sign = values.Of(Sign),
            EndsUse = !values.Of(StillUsed),
        },
    };
}

/// <summary>record indicator, indicators.csv: somebody looked at a bath's indicator.</summary>
internal static class IndicatorKind
{
    private static readonly Field<string> Colour = new("colour", Notations.Line(60))
    {
        Help = "the colour of its indicator, such as yellow or purple", Example = "purple", IsNeeded = true,
        IsArgument = true, Width = 12,
        Choices = (read, holdings) =>
            [(read.Find(BathNoteFields.Bath) is { } bath ? holdings.Bath(bath)?.Indicator : null) ?? "purple",
                "yellow"],
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<IndicatorReading>
    {
        Name = "indicator",
        Caution = UsualCautions.Handling,
        File = "indicators",
        Title = "Indicator",
        Purpose = "Records the colour of a bath's indicator; at the colour that its item names the bath is exhausted.",
        Details = [
            "At any other colour the bath is used on. The colour is a setting of the item: record item ITEM "
                + "--indicator COLOUR"],
        Example = "ST1 purple",
        ExampleNeeds = ["item citric-stop --indicator purple", "bath ST1 citric-stop 1l --dilution 1+0 --amount 15g"],
        Bound = [new(BathNoteFields.Bath, entry => entry.Bath), new(Colour, entry => entry.Colour)],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Bath = values.Of(BathNoteFields.Bath),
            Colour = values.Of(Colour),
        },
    };
}

/// <summary>record silver-test, silver_tests.csv: a silver strip was held into a fixer.</summary>
internal static class SilverTestKind
{
    private static readonly Field<decimal> Grams = new("grams_per_litre", Notations.Number(0, 100, 3, "GRAMS"))
    {
        Label = "Silver, g/litre", Option = "--grams", Help = "grams of silver per litre", Example = "3.5",
        IsNeeded = true, IsArgument = true, Width = 8,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<SilverTest>
    {
        Name = "silver-test",
        Caution = UsualCautions.Handling,
        File = "silver_tests",
        Title = "Silver in a fixer",
        Purpose = "Records how much silver a test strip showed in a fixer.",
        Details = [
            "The settings silver-limit-film, silver-limit-paper and silver-limit-paper-first say at how much a bath is "
                + "exhausted."],
        Example = "F4 3.5",
        Bound = [new(BathNoteFields.Bath, entry => entry.Bath), new(Grams, entry => entry.GramsPerLitre)],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Bath = values.Of(BathNoteFields.Bath),
            GramsPerLitre = values.Of(Grams),
        },
    };
}

/// <summary>record residual-test, residual_tests.csv: what is left in film or paper.</summary>
internal static class ResidualTestKind
{
    private static readonly Field<string> LookedFor = new("looked_for", Words.Residues)
    {
        Help = "silver, left after fixing, or hypo, left after washing", Example = "silver", IsNeeded = true,
        IsArgument = true, Width = 8,
        Choices = (_, _) => Words.Residues.Words,
    };

    private static readonly Field<string> Result = new("result", Notations.Line(60))
    {
        Help = "what it showed, such as no stain, or 0.012 g/m2", Example = "no stain", IsNeeded = true,
        IsArgument = true, Width = 24,
        Choices = (_, _) => ["no stain", "faint stain", "stain"],
    };

    private static readonly Field<bool> Passed = new("passed", Words.YesOrNo)
    {
        Help = "whether that was good enough; otherwise yes", Example = "yes", Width = 4,
        Choices = (_, _) => ["yes", "no"],
    };

    private static readonly Field<string> Session = new("session", Notations.Name("SESSION"))
    {
        Help = "the session it belongs to; nothing for a test of the bath alone", Example = "S22", Width = 8,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<ResidualCheck>
    {
        Name = "residual-test",
        Caution = UsualCautions.Handling,
        File = "residual_tests",
        Title = "Residual test",
        Purpose = "Records what is left in film or paper: the residual silver test after fixing, the residual hypo "
            + "test after washing.",
        Details =
        [
            "Silver that is left says that the fixer is exhausted, hypo that is left that the wash aid is. A figure "
                + "above the setting residual-hypo-limit has failed, whatever else is said.",
        ],
        Example = "F4 silver \"no stain\" --session S22",
        Bound =
        [
            new(BathNoteFields.Bath, entry => entry.Bath), new(LookedFor, entry => entry.LookedFor),
            new(Result, entry => entry.Result),
            new(Passed, entry => entry.HasPassed), new(Session, entry => entry.Session),
        ],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Bath = values.Of(BathNoteFields.Bath),
            LookedFor = values.Of(LookedFor),
            Result = values.Of(Result), HasPassed = values.Maybe(Passed) ?? true, Session = values.Find(Session),
        },
    };
}

/// <summary>record control-strip, control_strips.csv: a control strip was developed.</summary>
internal static class ControlStripKind
{
    private static readonly Field<string> Result = new("result", Notations.Line(60))
    {
        Help = "what was read from the strip, such as speed -0.04, contrast +0.02", Example = "speed -0.04",
        IsNeeded = true, IsArgument = true, Width = 30,
        Choices = (_, _) => ["within limits"],
    };

    private static readonly Field<bool> Within = new("within_limits", Words.YesOrNo)
    {
        Help = "whether that is within your limits; otherwise yes", Example = "yes", Width = 4,
        Choices = (_, _) => ["yes", "no"],
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<ControlStripTest>
    {
        Name = "control-strip",
        Caution = UsualCautions.Handling,
        File = "control_strips",
        Title = "Control strip",
        Purpose = "Records what a control strip showed of a developer that is replenished.",
        Details =
        [
            "The limits are yours. Today and the next session warn of a strip out of limits until another one is "
                + "within them.",
        ],
        Example = "D1 \"speed -0.12\" --within-limits no",
        ExampleNeeds = ["bath D1 syrup 1l --dilution 1+49"],
        Bound =
        [
            new(BathNoteFields.Bath, entry => entry.Bath), new(Result, entry => entry.Result),
            new(Within, entry => entry.IsWithinLimits),
        ],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Bath = values.Of(BathNoteFields.Bath),
            Result = values.Of(Result),
            IsWithinLimits = values.Maybe(Within) ?? true,
        },
    };
}

/// <summary>record bath-storage, bath_storage.csv: a bath stands in another container.</summary>
internal static class BathStorageKind
{
    private static readonly Field<WorkingContainer> Container = new("container", Words.Containers)
    {
        Label = "Kept in", Help = "what it is kept in now", Example = "part-full bottle", IsNeeded = true,
        IsArgument = true, Width = 16,
        Choices = (_, _) => Words.Containers.Words,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<BathStorage>
    {
        Name = "bath-storage",
        Caution = UsualCautions.Handling,
        File = "bath_storage",
        Title = "What a bath is kept in",
        Purpose = "Records that a bath is kept in another container from that day on.",
        Details = ["Each container has its own limit, a setting of the item."],
        Example = "F4 \"part-full bottle\"",
        Bound = [new(BathNoteFields.Bath, entry => entry.Bath), new(Container, entry => entry.Container)],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Bath = values.Of(BathNoteFields.Bath),
            Container = values.Of(Container),
        },
    };
}
