using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Core.Journal.Kinds;

/// <summary>record storage, storage_moves.csv: a box or bottle is kept somewhere else.</summary>
internal static class StorageKind
{
    private static readonly Field<string> What = new("container", Notations.Known("CONTAINER"))
    {
        Label = "What", Help = "the box or bottle, such as fen80/3", Example = "fen80/3", IsNeeded = true,
        IsArgument = true, Width = 16,
        Choices = Offered.Containers,
    };

    private static readonly Field<string> To = new("to", Notations.Line(60))
    {
        Label = "Kept in", Help = "where it is kept now: freezer, fridge, shelf, or a place of your own",
        Example = "shelf", IsNeeded = true, Width = 12,
        Choices = Offered.Storages,
        Offer = (read, holdings) => read.Find(What) is not { } code ? null
            : holdings.Container(code)?.Storage.Trim().ToLowerInvariant() is "freezer" or "fridge"
                ? "shelf"
                : "freezer",
    };

    private static readonly Field<LocalDate> OpensFrom = new("open_from", Notations.Date)
    {
        Label = "not opened before",
        Help = "the first day on which it may be opened; otherwise what the setting thaw-hours gives",
        Example = "2026-03-16", Width = 10,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<StorageMove>
    {
        Name = "storage",
        File = "storage_moves",
        Title = "Move",
        Purpose = "Records that a box or bottle is kept somewhere else: freezer, fridge, shelf.",
        Details = ["Film that comes out of the cold must warm up before its box is opened, or water condenses on it."],
        Example = "fen80/7 --to shelf",
        Bound = [new(What, entry => entry.Container), new(To, entry => entry.To),
        new(OpensFrom, entry => entry.OpensFrom)],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Container = values.Of(What), To = values.Of(To),
            OpensFrom = values.Maybe(OpensFrom),
        },
    };
}

/// <summary>record opening, openings.csv: a sealed box or bottle is opened.</summary>
internal static class OpeningKind
{
    private static readonly Field<string> What = new("container", Notations.Known("CONTAINER"))
    {
        Label = "What",
        Help = "what is written on it, such as fen80/3; or an item's code, for the sealed one used first",
        Example = "fen80/3",
        IsNeeded = true, IsArgument = true, Width = 16,
        Choices = (read, holdings) =>
            [.. holdings.Containers.Where(container => container.IsSealed).Select(container => container.Code),
                .. Offered.Items(read, holdings)],
    };

    private static readonly Field<string> Batch = new("batch", Notations.Line(60))
    {
        Help = "with an item: the emulsion number or batch number it must be of", Example = "", Width = 12,
    };

    private static readonly Field<int> Envelopes = new("envelopes", Notations.Whole(1, 1000))
    {
        Help = "for a large box of film: how many sealed envelopes of the same size are in it", Example = "", Width = 4,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<Opening>
    {
        Name = "opening",
        Caution = UsualCautions.Handling,
        File = "openings",
        Title = "Open",
        Purpose = "Records that a sealed box or bottle is opened; its life since opening starts on that day.",
        Details = ["A sealed box or bottle that is used is opened by that; it needs no entry of its own."],
        Example = "paperfix/2",
        Bound = [new(What, entry => entry.Container), new(Batch, entry => Given.Text(entry.Batch)),
        new(Envelopes, entry => entry.Envelopes)],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Container = values.Of(What),
            Batch = values.Find(Batch) ?? "",
            Envelopes = values.Maybe(Envelopes),
        },
    };
}

/// <summary>record exposure-index, exposure_indexes.csv: the exposure index at which the user exposes a lot.</summary>
internal static class ExposureIndexKind
{
    private static readonly Field<string> Box = new("container", Notations.Known("BOX"))
    {
        Label = "Box", Help = "a box of film, such as fen80/3; all boxes of its delivery follow", Example = "fen80/3",
        IsNeeded = true, IsArgument = true,
        Width = 16, Choices = Offered.Boxes,
    };

    private static readonly Field<int> Index = new("exposure_index", Notations.Whole(1, 100_000))
    {
        Label = "Exposed at EI", Help = "the exposure index at which you expose it, such as 64", Example = "64",
        IsNeeded = true, IsArgument = true,
        Width = 6,
        Offer = (read, holdings) => read.Find(Box) is { } box
            ? Given.Number(holdings.Container(box)?.Lot.ExposureIndex)
            : null,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<ExposureIndexSetting>
    {
        Name = "exposure-index",
        File = "exposure_indexes",
        Title = "Exposure index",
        Purpose = "Sets the exposure index at which you expose the film of a delivery: your own figure, from your own "
            + "tests.",
        Example = "fen80/7 64",
        Bound = [new(Box, entry => entry.Container), new(Index, entry => entry.ExposureIndex)],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Container = values.Of(Box),
            ExposureIndex = values.Of(Index),
        },
    };
}

/// <summary>record discard, discards.csv: a bath, a container or part of an item's stock goes.</summary>
internal static class DiscardKind
{
    private static readonly Field<string> What = new("what", Notations.Known("WHAT"))
    {
        Help = "a bath, a box or bottle such as syrup/1, an item, a holder side, or a box of exposed sheets",
        Example = "F1", IsNeeded = true,
        IsArgument = true, Width = 16,
        Choices = (read, holdings) =>
        [
            .. Offered.Baths(read, holdings), .. Offered.Items(read, holdings), .. Offered.Containers(read, holdings),
            .. Offered.FilmPlaces(read, holdings),
        ],
    };

    private static readonly Field<Quantity> Amount = new("quantity", Notations.AmountOf(
        (read, terms) => read.Find(What) is { } what ? terms.ItemOf(what) ?? terms.HeldIn(what)
            ?? (what.IndexOf('/', StringComparison.Ordinal) is > 0 and var at ? terms.ItemOf(what[..at]) : null) : null,
                Unit.Sheet))
    {
        Label = "How much", Help = "how much, such as 3 or 50ml; not needed for all of a bath, box or bottle",
        Example = "", IsArgument = true, Width = 10,
    };

    private static readonly Field<string> Reason = new("reason", Notations.Line(200))
    {
        Help = "why: exhausted, expired, specks, fogged", Example = "exhausted", IsNeeded = true,
        Choices = (_, _) => ["exhausted", "expired", "specks", "yellow", "smell", "fogged", "given away"],
        Offer = (read, holdings) => read.Find(What) is not { } what
            ? null
            : holdings.Bath(what) is not { } bath ? "expired"
                : new Baths.BathReading(bath, holdings.AsOf).State switch
                {
                    Baths.BathState.Expired => "expired",
                    Baths.BathState.Exhausted => "exhausted",
                    _ => null,
                },
    };

    private static readonly Field<string> Jug =
        SharedFields.JugFor(WasteOf,
            (read, holdings) => read.Find(What) is { } what && holdings.Bath(what) is not null);

    private static readonly Field<string> To = new("to", Notations.Line(200))
    {
        Label = "Or handed to",
        Help = "the place that took it, where it went into no jug: a collection point, the maker",
        Example = "", Width = 30, Choices = (_, _) => ["collection point"],
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<Discard>
    {
        Name = "discard",
        Caution = UsualCautions.Waste,
        File = "discards",
        Title = "Discard",
        Purpose = "Records a bath that is discarded whole, or a box, a bottle or part of an item's stock that is "
            + "discarded unused.",
        Details =
        [
            "A solution goes into a jug of its own kind of waste, or to a place that takes it. Used fixer holds "
                + "silver; never mix anything with bleach. The maker's safety data sheet and local rules say where it "
                + "may go.",
        ],
        Example = "F4 --reason expired --jug J2",
        Bound =
        [
            new(What, entry => entry.What), new(Amount, entry => entry.Quantity), new(Reason, entry => entry.Reason),
            new(Jug, entry => entry.Jug), new(To, entry => entry.To),
        ],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, What = values.Of(What),
            Quantity = values.Maybe(Amount),
            Reason = values.Of(Reason), Jug = values.Find(Jug), To = values.Find(To),
        },
    };

    private static Baths.WasteKind? WasteOf(FieldValues read, Holdings holdings) =>
        read.Find(What) is not { } what ? null
            : holdings.Bath(what) is { } bath ? Baths.WasteKinds.Of(bath.Role)
            : (holdings.Item(what)
                ?? (holdings.Container(what) is { } bottle ? holdings.Item(bottle.Lot.Item) : null)) is { } item
                ? Baths.WasteKinds.Of(item.Role) : null;
}
