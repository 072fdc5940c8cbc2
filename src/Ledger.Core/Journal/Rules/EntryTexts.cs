using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// Every text that a user writes into an entry, of every kind: whatever door it came through, it passes here before a
/// rule sees it. A tab becomes a blank; what could steer a terminal or turn the direction of writing is refused.
/// </summary>
internal static class EntryTexts
{
    /// <summary>The entry with its texts as they are kept.</summary>
    /// <exception cref="RefusedException">A text holds what no text may hold.</exception>
    public static Entry Checked(Entry entry)
    {
        Exact(entry.Key, "the reference");
        return Own(entry) with { Note = Lines(entry.Note, "the note"),
            Before = Line(entry.Before, "the entry that it comes before") };
    }

    private static Entry Own(Entry entry) => entry switch
    {
        ItemDefinition e => e with { Item = Of(e.Item) },
        FormatDefinition e => Unchanged(e, e.Format.Code, "the format"),
        ProcessDefinition e => e with { Process = Line(e.Process, "the process"), Steps = [.. e.Steps.Select(Of)] },
        SettingChange e => e with { Setting = Line(e.Setting, "the setting"), Value = Line(e.Value, "the value") },
        Delivery e => e with
        {
            Reference = Line(e.Reference, "the reference"), Currency = Maybe(e.Currency, "the currency"),
            Lines = [.. e.Lines.Select(Of)],
        },
        Opening e => e with { Container = Line(e.Container, "the container"),
            Batch = Line(e.Batch, "the batch number") },
        BathMixing e => e with
        {
            Bath = Line(e.Bath, "the bath"), Item = Line(e.Item, "the item"),
            Capacity = e.Capacity is { } capacity ? Of(capacity) : null,
            PairedWith = Maybe(e.PairedWith, "the bath it is paired with"),
            Container = Maybe(e.Container, "the container"),
        },
        SessionLog e => e with
        {
            Session = Line(e.Session, "the session"), Process = Line(e.Process, "the process"),
            Lines = [.. e.Lines.Select(Of)], Bath = Maybe(e.Bath, "the bath"),
            DrawFirst = Names(e.DrawFirst, "the container"), Plan = Maybe(e.Plan, "the plan"),
        },
        PlannedSession e => e with { Plan = Line(e.Plan, "the plan"), Request = Of(e.Request) },
        PlanEnding e => e with { Plan = Line(e.Plan, "the plan"), Reason = Line(e.Reason, "the reason") },
        Discard e => e with
        {
            What = Line(e.What, "what is discarded"), Reason = Line(e.Reason, "the reason"),
            Jug = Maybe(e.Jug, "the jug"), To = Maybe(e.To, "the place that takes it"),
        },
        StockCount e => e with { What = Line(e.What, "what was counted"), Reason = Line(e.Reason, "the reason") },
        HolderDefinition e => Unchanged(e, e.Format.Code, "the format") with
        {
            Holder = Line(e.Holder, "the holder"), Sides = Names(e.Sides, "the side"),
            Notch = Line(e.Notch, "the notch"),
        },
        Cleaning e => e with { Holders = Names(e.Holders, "the holder") },
        SideService e => e with { Sides = Names(e.Sides, "the side"), Reason = Line(e.Reason, "the reason") },
        Load e => e with { Sides = Names(e.Sides, "the side"), From = Line(e.From, "the box") },
        ExposureNote e => e with
        {
            Sides = Names(e.Sides, "the side"), Group = Line(e.Group, "the group"),
            Subject = Line(e.Subject, "the subject"),
        },
        Unload e => e with
        {
            From = Names(e.From, "the side"), Group = Line(e.Group, "the group"), To = Maybe(e.To, "the box"),
        },
        KeeperNaming e => e with { Negative = Line(e.Negative, "the negative") },
        FateChange e => e with { Sheets = Names(e.Sheets, "the sheet") },
        SheetNote e => e with { Sheets = Names(e.Sheets, "the sheet"), Result = Line(e.Result, "the result") },
        Filing e => e with { Sheets = Names(e.Sheets, "the sheet"), Place = Line(e.Place, "the place") },
        SuspicionRaising e => e with
        {
            What = Line(e.What, "what is under suspicion"), Reason = Line(e.Reason, "the reason"),
                Item = Maybe(e.Item, "the item"),
        },
        SuspicionClearing e => e with
        {
            What = Line(e.What, "what was under suspicion"), Reason = Line(e.Reason, "the reason"),
                Item = Maybe(e.Item, "the item"),
        },
        StorageMove e => e with { Container = Line(e.Container, "the container"),
            To = Line(e.To, "the storage place") },
        ExposureIndexSetting e => e with { Container = Line(e.Container, "the container") },
        PrintSession e => e with
        {
            Session = Line(e.Session, "the session"), Bath = Maybe(e.Bath, "the bath"),
            Negatives = Names(e.Negatives, "the negative"), Lines = [.. e.Lines.Select(Of)],
        },
        Rotation e => e with
        {
            Bath = Maybe(e.Bath, "the bath"), NewBath = Line(e.NewBath, "the new bath"),
            Item = Maybe(e.Item, "the item"), Capacity = e.Capacity is { } capacity ? Of(capacity) : null,
            Container = Maybe(e.Container, "the container"), Reason = Line(e.Reason, "the reason"),
            Jug = Maybe(e.Jug, "the jug"),
        },
        TopUp e => e with
        {
            Bath = Line(e.Bath, "the bath"), Item = Maybe(e.Item, "the item"), Jug = Maybe(e.Jug, "the jug"),
            Container = Maybe(e.Container, "the container"),
        },
        ClearingTest e => e with
        {
            Bath = Line(e.Bath, "the bath"), Film = Line(e.Film, "the film"),
            Container = Maybe(e.Container, "the container"),
        },
        BathObservation e => e with { Bath = Line(e.Bath, "the bath"), Sign = Line(e.Sign, "the sign") },
        SilverTest e => e with { Bath = Line(e.Bath, "the bath") },
        ResidualCheck e => e with
        {
            Bath = Line(e.Bath, "the bath"), Session = Maybe(e.Session, "the session"),
            LookedFor = Line(e.LookedFor, "what was looked for"), Result = Line(e.Result, "the result"),
        },
        IndicatorReading e => e with { Bath = Line(e.Bath, "the bath"), Colour = Line(e.Colour, "the colour") },
        ControlStripTest e => e with { Bath = Line(e.Bath, "the bath"), Result = Line(e.Result, "the result") },
        BathStorage e => e with { Bath = Line(e.Bath, "the bath") },
        Decanting e => e with { From = Line(e.From, "the bottle"), Bottles = [.. e.Bottles.Select(Of)] },
        StockSolution e => e with
        {
            Item = Line(e.Item, "the item"), From = Maybe(e.From, "what it is mixed from"),
            Bottles = [.. e.Bottles.Select(Of)], Container = Maybe(e.Container, "the container"),
        },
        JugStart e => e with { Jug = Line(e.Jug, "the jug"), Contents = Line(e.Contents, "the contents") },
        JugFilling e => e with { Jug = Line(e.Jug, "the jug"), What = Line(e.What, "what was filled in") },
        JugHandover e => e with { Jug = Line(e.Jug, "the jug"), To = Line(e.To, "who took it") },
        OrderPlacement e => e with
        {
            Order = Line(e.Order, "the order"), Supplier = Line(e.Supplier, "the supplier"),
            Lines = [.. e.Lines.Select(Of)],
        },
        OrderChange e => e with { Order = Line(e.Order, "the order"), Item = Maybe(e.Item, "the item") },
        OrderCancellation e => e with
        {
            Order = Line(e.Order, "the order"), Item = Maybe(e.Item, "the item"), Reason = Line(e.Reason, "the reason"),
        },
        PriceRiseNotice e => e with { Item = Line(e.Item, "the item") },
        OrderTermsSetting e => e with { Terms = e.Terms with { Item = Line(e.Terms.Item, "the item") } },
        NoticeSnooze e => e with { About = [.. e.About.Select(name => Line(name, "what it is about"))],
            Reason = Line(e.Reason, "the reason") },
        Amendment e => e with
        {
            Reference = Maybe(e.Reference, "the reference"), Reason = Line(e.Reason, "the reason"),
            Changes = [.. e.Changes.Select(change => change with
            {
                Field = Line(change.Field, "the field"), Value = Lines(change.Value, "the new value"),
            })],
        },
        Undo e => e with { Reference = Maybe(e.Reference, "the reference"), Reason = Line(e.Reason, "the reason") },
        _ => throw new ArgumentException($"the texts of a {entry.Kind} are not known", nameof(entry)),
    };

    private static Item Of(Item item) => item with
    {
        Code = Line(item.Code, "the item's code"),
        Name = Line(item.Name, "the item's name"),
        Format = item.Format is { } format ? Unchanged(format, format.Code, "the format") : null,
        Capacity = item.Capacity is { } capacity ? Of(capacity) : null,
        OtherCapacities = [.. item.OtherCapacities.Select(Of)],
        Formula = Lines(item.Formula, "the formula"),
        Cautions = Lines(item.Cautions, "the cautions"),
        Indicator = Maybe(item.Indicator, "the indicator"),
        StockOf = Maybe(item.StockOf, "what it is mixed from"),
        OtherParts = Names(item.OtherParts, "the item of another part"),
    };

    private static Capacity Of(Capacity capacity) =>
        capacity with { Basis = Line(capacity.Basis, "the basis of the capacity") };

    private static ProcessStep Of(ProcessStep step) => step with
    {
        Item = Maybe(step.Item, "the item of a step"), Note = Lines(step.Note, "the note of a step"),
    };

    private static DeliveryLine Of(DeliveryLine line) => line with
    {
        Item = Line(line.Item, "the item"), Batch = Line(line.Batch, "the batch number"),
        Storage = Line(line.Storage, "the storage place"), Order = Maybe(line.Order, "the order"),
    };

    private static OrderedPacks Of(OrderedPacks line) => line with { Item = Line(line.Item, "the item") };

    private static FilledBottle Of(FilledBottle bottle) => bottle with { Name = Maybe(bottle.Name, "the bottle") };

    private static SessionLine Of(SessionLine line) => line with
    {
        Item = Line(line.Item, "the film"), Group = Line(line.Group, "the group"),
        Container = Maybe(line.Container, "the container"), From = Maybe(line.From, "where the sheets come from"),
        Note = Lines(line.Note, "the note of a line"),
    };

    private static PrintLine Of(PrintLine line) => line with
    {
        Item = Line(line.Item, "the paper"), Container = Maybe(line.Container, "the container"),
        Note = Lines(line.Note, "the note of a line"),
    };

    private static PlanRequest Of(PlanRequest request) => Unchanged(request, request.Times.Text, "the minutes") with
    {
        Process = Line(request.Process, "the process"), Bath = Maybe(request.Bath, "the bath"),
        Sheets = [.. request.Sheets.Select(Of)],
    };

    private static RequestedSheets Of(RequestedSheets sheets) => sheets with
    {
        Film = Line(sheets.Film, "the film"), Group = Line(sheets.Group, "the group"),
        From = Maybe(sheets.From, "where the sheets come from"), Subject = Line(sheets.Subject, "the subject"),
        Holder = Line(sheets.Holder, "the holder"),
    };

    private static IReadOnlyList<string> Names(IReadOnlyList<string> names, string what) =>
        [.. names.Select(name => Line(name, what))];

    private static string Line(string text, string what) => Kept(text, hasLines: false, what);

    private static string Lines(string text, string what) => Kept(text, hasLines: true, what);

    private static string? Maybe(string? text, string what) => text is null ? null : Line(text, what);

    /// <summary>A text that is a part of something already read, which a tab would have spoilt.</summary>
    private static T Unchanged<T>(T whole, string text, string what)
    {
        Exact(text, what);
        return whole;
    }

    private static void Exact(string text, string what)
    {
        Require.That(!text.Contains('\t'), $"{what} holds a tab; write it without");
        Kept(text, hasLines: false, what);
    }

    private static string Kept(string text, bool hasLines, string what)
    {
        var kept = UserText.Kept(text, hasLines, out var problem);
        Require.That(problem is null, $"{what} holds {problem}; only text that can be seen is kept");
        return kept;
    }
}
