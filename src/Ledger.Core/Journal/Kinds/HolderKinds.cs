using Ledger.Core.Film;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Kinds;

/// <summary>record holder, holders.csv: a film holder, new or in place of what was written of it.</summary>
internal static class HolderDefinitionKind
{
    private const int MostSides = 50;

    private static Film.Holder? Last(Holdings holdings) =>
        holdings.Film.Names is [.., var last] ? holdings.Film.Holder(last.Code) : null;

    private static readonly Field<string> Holder = new("holder", Notations.Name("HOLDER"))
    {
        Help = "the name on it, such as E07", Example = "E07", IsNeeded = true, IsArgument = true, Width = 12,
        Offer = (_, holdings) => Last(holdings) is { } last
            ? NextName.After(last.Code, name => holdings.Film.Holder(name) is not null) : "H01",
    };

    private static readonly Field<Format> Format = new("format", Notations.Format)
    {
        Help = "the format of the film it takes, such as 8x10", Example = "8x10", IsNeeded = true, Width = 12,
        Choices = (_, holdings) => holdings.Formats.All.Where(format => format.Unit == Unit.Sheet)
            .Select(format => format.Code),
        Offer = (_, holdings) => Last(holdings)?.Format.Code ?? "8x10",
    };

    private static readonly Field<IReadOnlyList<string>> Sides = new("sides", new(
        (text, _, _) => Named(text) is { } sides ? sides
            : Parsed.Not<IReadOnlyList<string>>(
                $"the names of the sides, such as 1/2 or A/B, or how many there are, 1 to {MostSides}"),
        (sides, _) => sides is [var only] && only.All(char.IsAsciiDigit) ? $"{only}/" : string.Join('/', sides))
        { Placeholder = "NAMES", Divider = "/" })
    {
        Help = "the names of its sides, such as 1/2 or A/B, or how many there are; otherwise those of the setting "
            + "side-names", Example = "1/2",
        Width = 16,
        Offer = (_, holdings) => Last(holdings) is { } last
            ? string.Join('/', last.Sides.Select(side => side.Name)) : holdings.Settings.Film.SideNames,
    };

    private static readonly Field<string> Notch = new("notch", Notations.Line(60))
    {
        Label = "Flap notches", Help = "the notches filed into its flap, to tell it in the dark", Example = "VU",
        Width = 10,
    };

    private static readonly Field<LocalDate> Bought = new("bought", Notations.Date)
    {
        Help = "the day it was bought", Example = "2024-05-01", Width = 10,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<HolderDefinition>
    {
        Name = "holder",
        File = "holders",
        Title = "Holder",
        Purpose = "Registers a film holder, or changes what is known of it.",
        Details = [
            "A side is called by its holder and its own name: E07-2. A holder of six sheets has six sides: "
                + "1/2/3/4/5/6."],
        Example = "E07 --format 8x10 --notch VU",
        IsDated = false,
        NamedBy = Holder,
        IsReplaceable = true,
        Bound =
        [
            new(Holder, entry => entry.Holder), new(Format, entry => entry.Format),
            new(Sides, entry => Given.Names(entry.Sides)),
            new(Notch, entry => Given.Text(entry.Notch)), new(Bought, entry => entry.BoughtOn),
        ],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Holder = values.Of(Holder),
            Format = values.Of(Format),
            Sides = values.Find(Sides) ?? [], Notch = values.Find(Notch) ?? "", BoughtOn = values.Maybe(Bought),
        },
    };

    private static string[]? Named(string text)
    {
        if (text.All(char.IsAsciiDigit))
            return text.Length <= 2 && Numbers.Read(text, out _) is >= 1 and <= MostSides and var count
                ? [.. Enumerable.Range(1, (int)count).Select(number => Scaled.ToText(number, 0))] : null;
        var names = text.TrimEnd('/').Split('/', StringSplitOptions.TrimEntries);
        return names.Length <= MostSides && names.All(name => name.Length is > 0 and <= 60) ? names : null;
    }
}

/// <summary>record cleaning, cleanings.csv: holders were cleaned.</summary>
internal static class CleaningKind
{
    private static readonly Field<IReadOnlyList<string>> Holders = new("holders", Notations.Names("HOLDER"))
    {
        Help = "the holders, such as E01 E02", Example = "E01 E02", IsNeeded = true, IsArgument = true, Width = 44,
        Choices = Dirty,
        Offer = (read, holdings) => Dirty(read, holdings).FirstOrDefault(),
    };

    private static readonly Field<bool> Bagged = new("bagged", Notations.YesNo)
    {
        Help = "they were put into bags afterwards", Example = "yes", Width = 4,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<Cleaning>
    {
        Name = "cleaning",
        File = "cleanings",
        Title = "Cleaning",
        Purpose = "Records that holders were cleaned, and perhaps bagged.",
        Details = ["A holder counts as clean until it is emptied."],
        Example = "E01 E02 --bagged",
        Bound = [new(Holders, entry => entry.Holders), new(Bagged, entry => Given.Yes(entry.IsBagged))],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Holders = values.Of(Holders),
            IsBagged = values.Of(Bagged),
        },
    };

    private static IEnumerable<string> Dirty(FieldValues read, Holdings holdings) =>
        holdings.Film.Holders.Where(holder => holder.CleanBeforeLoad is not null).Select(holder => holder.Code);
}

/// <summary>record load, loads.csv: sheets are loaded into holders.</summary>
internal static class LoadKind
{
    private static readonly Field<IReadOnlyList<string>> Sides = SharedFields.Sides(Free);

    private static readonly Field<string> From = new("from", Notations.Known("FILM|BOX"))
    {
        Label = "Film or box", Help = "the film, for the box used first; or a box, such as fen80/3", Example = "fen80",
        IsNeeded = true, Width = 16,
        Choices = (read, holdings) => [.. Offered.SheetFilms(read, holdings), .. Offered.ClearBoxes(read, holdings)],
        Offer = LastLoaded,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<Load>
    {
        Name = "load",
        File = "loads",
        Title = "Load",
        Purpose = "Records sheets that are loaded into holders, one into each side.",
        Details = [
            "A side that holds a sheet cannot be loaded again before it is unloaded. Clean a holder before you load "
                + "it."],
        Example = "E05 E06-1 --from practice",
        Bound =
        [
            new(Sides, entry => entry.Sides), new(From, entry => entry.From),
        ],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Sides = values.Of(Sides), From = values.Of(From),
        },
    };

    private static IEnumerable<string> Free(FieldValues read, Holdings holdings) => holdings.Film.Holders
        .Where(holder => FormatOf(read, holdings) is not { } format || holder.Format == format)
        .SelectMany(holder => holder.Sides)
        .Where(side => side.OutOfService is null && holdings.Film.In(side) is null).Select(side => side.Code);

    /// <summary>
    /// The film that was loaded last into holders of the format, as far as there is some; else one that there is.
    /// </summary>
    private static string? LastLoaded(FieldValues read, Holdings holdings)
    {
        bool IsAtHand(Item film) => film is { Kind: ItemKind.Film, Unit: Unit.Sheet, IsPaper: false }
            && (FormatOf(read, holdings) is not { } format || film.Format == format)
                && holdings.ContainersOf(film.Code).Any(box => box.Suspicion is null);
        return (holdings.Film.Sheets.Select(sheet => holdings.Item(sheet.Item)).OfType<Item>().LastOrDefault(IsAtHand)
            ?? holdings.ItemsOf(ItemKind.Film).FirstOrDefault(IsAtHand))?.Code;
    }

    private static Format? FormatOf(FieldValues read, Holdings holdings) =>
        read.Find(Sides) is not [var first, ..] ? null
            : (holdings.Film.Holder(first)
                ?? (holdings.Film.Side(first) is { } side ? holdings.Film.Holder(side.Holder) : null))?.Format;
}

/// <summary>record exposure, exposures.csv: sheets in holders were exposed.</summary>
internal static class ExposureKind
{
    private static readonly Field<IReadOnlyList<string>> Sides = SharedFields.Sides(Loaded);

    private static readonly Field<string> Group = new("group", Notations.Line(60))
    {
        Help = "how they will be developed: N+1, N-1; otherwise N", Example = "N-1", Width = 5,
        Choices = Offered.Groups,
        Offer = (_, _) => Exposure.Normal,
    };

    private static readonly Field<string> Line = new("subject", Notations.Line(200))
    {
        Label = "Subject", Option = "--subject", Help = "the subject, in one free line: place, light, lens",
        Example = "mill at noon", Width = 50,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<ExposureNote>
    {
        Name = "exposure",
        File = "exposures",
        Title = "Exposure",
        Purpose = "Records which sides were exposed, for which development group, with one free line for the subject.",
        Example = "E09-1 --group N-1 --subject \"mill at noon\"",
        Bound =
        [
            new(Sides, entry => entry.Sides), new(Group, entry => Given.Text(entry.Group)),
            new(Line, entry => Given.Text(entry.Subject)),
        ],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Sides = values.Of(Sides),
            Group = values.Find(Group) ?? "",
            Subject = values.Find(Line) ?? "",
        },
    };

    private static IEnumerable<string> Loaded(FieldValues read, Holdings holdings) =>
        holdings.Film.HoldersInUse.SelectMany(holder => holder.Sides)
            .Where(side => holdings.Film.In(side) is { Exposure: null }).Select(side => side.Code);
}

/// <summary>record unload, unloads.csv: sheets leave their holders.</summary>
internal static class UnloadKind
{
    private static readonly Field<IReadOnlyList<string>> From = new("from", Notations.LongNames("FROM"))
    {
        Help = "holder sides such as E07-2, holders, sheets such as #12, or boxes of exposed sheets such as fen80 N, "
            + "with commas between",
        Example = "E07-2, fen80 N", IsNeeded = true, IsArgument = true, Width = 44,
        Choices = (_, holdings) => [.. Exposed(holdings), .. holdings.Film.ExposedBoxes.Select(box => box.Code)],
        Offer = (_, holdings) => Exposed(holdings).FirstOrDefault(),
    };

    private static readonly Field<string> Group = new("group", Notations.Line(60))
    {
        Label = "Other group", Help = "another group than the exposure notes say, which are amended", Example = "N+1",
        Width = 5,
        Choices = Offered.Groups,
    };

    private static readonly Field<string> To = new("to", Notations.Known("BOX"))
    {
        Label = "Back into", Help = "the box for sheets that were not exposed; otherwise the one they came out of",
        Example = "fen80/3", Width = 16,
        Choices = (_, holdings) => holdings.Containers
            .Where(box => !box.IsSealed && holdings.Item(box.Lot.Item)?.Kind == ItemKind.Film).Select(box => box.Code),
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<Unload>
    {
        Name = "unload",
        File = "unloads",
        Title = "Unload",
        Purpose = "Records sheets that leave their holders: exposed ones go into the box of their film and group, the "
            + "others back into their box.",
        Details = [
            "A box of exposed sheets with a wrong label is amended in the same way: name it, and the group it really "
                + "is."],
        Example = "E01 E02-1",
        Bound = [new(From, entry => entry.From), new(Group, entry => Given.Text(entry.Group)),
        new(To, entry => entry.To)],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, From = values.Of(From),
            Group = values.Find(Group) ?? "",
            To = values.Find(To),
        },
    };

    private static IEnumerable<string> Exposed(Holdings holdings) =>
        holdings.Film.HoldersInUse.SelectMany(holder => holder.Sides)
            .Where(side => holdings.Film.In(side) is { Exposure: not null }).Select(side => side.Code);
}

/// <summary>record service, services.csv: holder sides are taken out of service, or put back into it.</summary>
internal static class ServiceKind
{
    private static readonly Field<IReadOnlyList<string>> Sides = SharedFields.Sides(
        (_, holdings) => holdings.Film.Holders.SelectMany(holder => holder.Sides).Select(side => side.Code));

    private static readonly Field<bool> InService = new("in_service", Notations.YesNo)
    {
        Label = "Back in service", Option = "--back",
        Help = "they are in service again; otherwise they are taken out of it", Example = "no", Width = 4,
        Offer = (read, holdings) => read.Find(Sides) is [var first, ..]
            && holdings.Film.Side(first) is { OutOfService: not null } ? "yes" : "no",
    };

    private static readonly Field<string> Reason = SharedFields.Reason(
        "why: light leak, stiff dark slide, scratches, repaired", "light leak", width: 30,
        usual: ["light leak", "stiff dark slide", "scratches", "repaired"]);

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<SideService>
    {
        Name = "service",
        File = "services",
        Title = "Service",
        Purpose = "Takes holder sides out of service, or puts them back into it.",
        Details = ["A side that is out of service keeps the film that is in it."],
        Example = "E11-2 --reason \"stiff dark slide\"",
        Bound =
        [
            new(Sides, entry => entry.Sides), new(Reason, entry => entry.Reason),
            new(InService, entry => Given.Yes(entry.IsInService)),
        ],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Sides = values.Of(Sides),
            Reason = values.Of(Reason),
            IsInService = values.Of(InService),
        },
    };
}
