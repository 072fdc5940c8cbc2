using Ledger.Core.Journal.Entries;

namespace Ledger.Core.Journal.Kinds;

/// <summary>What both kinds name.</summary>
internal static class SuspicionFields
{
    /// <summary>What it is about.</summary>
    /// <param name="isRaised">Whether what is offered is under suspicion already.</param>
    public static Field<string> What(bool isRaised) => new("what", Notations.Known("WHAT"))
    {
        Help = "a bath, a box or bottle such as syrup/2, or the emulsion or batch number of a delivery",
            Example = "syrup/2", IsNeeded = true,
        IsArgument = true, Width = 16,
        Choices = (_, holdings) =>
        [
            .. holdings.Baths.Where(bath => bath.Suspicion is not null == isRaised).Select(bath => bath.Code),
            .. Offered.Numbers(holdings).Where(number => !isRaised || holdings.Containers.Any(one =>
                one.Lot.Suspicion is not null && one.Lot.Batch.Equals(number, StringComparison.OrdinalIgnoreCase))),
            .. holdings.Containers.Where(one => one.OwnSuspicion is not null == isRaised).Select(one => one.Code),
        ],
    };

    /// <summary>The item whose number it is.</summary>
    public static Field<string> Item { get; } = new("item", Notations.Known("ITEM"))
    {
        Help = "the item whose number it is, where several have the same", Example = "", Width = 12,
            Choices = Offered.Items,
    };
}

/// <summary>record suspicion, suspicions.csv: something may be wrong with a bath, a box, a bottle or a
/// delivery.</summary>
internal static class SuspicionKind
{
    private static readonly Field<string> What = SuspicionFields.What(isRaised: false);

    private static readonly Field<string> Reason = SharedFields.Reason(
        "what is wrong with it, or may be", "fogged edges on two sheets", width: 40,
        usual: ["fogged", "thin negatives", "smell", "colour", "recalled by the maker"]);

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<SuspicionRaising>
    {
        Name = "suspicion",
        File = "suspicions",
        Title = "Suspicion",
        Purpose = "Something may be wrong with a bath, a box, a bottle or a delivery: nothing of it is used until it "
            + "is cleared or discarded.",
        Details =
        [
            "It is not drawn, planned, loaded or counted as usable, and nothing goes through a bath. It stays in "
            + "stock and keeps its value; Today and the shelf show it.",
            "To find out, a session may develop a sheet from a box that it names as a test: \"1 fen80 test from "
            + "fen80/3\". `trace` shows what shares it already.",
        ],
        Example = "CP-3201 --reason \"fogged edges on two sheets\"",
        Bound = [new(What, entry => entry.What), new(Reason, entry => entry.Reason),
            new(SuspicionFields.Item, entry => entry.Item)],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, What = values.Of(What),
                Reason = values.Of(Reason),
            Item = values.Find(SuspicionFields.Item),
        },
    };
}

/// <summary>record clearance, clearances.csv: what was under suspicion is in order.</summary>
internal static class ClearanceKind
{
    private static readonly Field<string> What = SuspicionFields.What(isRaised: true);

    private static readonly Field<string> Reason = SharedFields.Reason(
        "what showed that it is in order", "test sheet was clear", width: 40,
        usual: ["test sheet was clear", "clearing test was good", "the holder was to blame"]);

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<SuspicionClearing>
    {
        Name = "clearance",
        File = "clearances",
        Title = "Clearance",
        Purpose = "Records that what was under suspicion is in order, and is used again.",
        Example = "CP-3201 --reason \"test sheet was clear\"",
        ExampleNeeds = ["suspicion CP-3201 --reason fogged"],
        Bound = [new(What, entry => entry.What), new(Reason, entry => entry.Reason),
            new(SuspicionFields.Item, entry => entry.Item)],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, What = values.Of(What),
                Reason = values.Of(Reason),
            Item = values.Find(SuspicionFields.Item),
        },
    };
}
