using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Kinds;

/// <summary>record count, counts.csv: what is really there.</summary>
internal static class CountKind
{
    private static readonly Field<string> What = new("item", Notations.Known("WHAT"))
    {
        Label = "What",
        Help = "a container, an item for all its containers together, a holder side, or a box of exposed sheets",
        Example = "syrup/2", IsNeeded = true, IsArgument = true, Choices = (read, holdings) =>
            [.. Offered.Containers(read, holdings), .. Offered.Items(read, holdings)],
    };

    private static readonly Field<Quantity> Found = new("found",
        Notations.Amount((read, terms) => terms.UnitOf(read.Of(What) ?? "")))
    {
        Label = "Found", Help = "what was counted, in the item's unit or another: 60.5, 20floz, 12 sheets",
        Example = "60.5", IsNeeded = true, IsArgument = true, Width = 12,
    };

    private static readonly Field<string> Reason = SharedFields.Reason(
        "why it differs: dregs, spill, evaporation, miscounted", "dregs",
        usual: ["dregs", "spill", "evaporation", "miscounted"]);

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<StockCount>
    {
        Name = "count",
        File = "counts",
        Title = "Count",
        Purpose = "Records what was counted or measured; the difference to the book is booked with its reason.",
        Example = "syrup/5 60.5 --reason dregs",
        Bound = [new(What, count => count.What), new(Found, count => count.Found), new(Reason, count => count.Reason)],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, What = values.Of(What), Found = values.Of(Found),
            Reason = values.Of(Reason),
        },
    };
}
