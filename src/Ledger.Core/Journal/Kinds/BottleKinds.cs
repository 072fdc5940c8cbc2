using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Kinds;

/// <summary>
/// So many like bottles that something is filled into: what a line of decanting says. The entry keeps bottle by bottle;
/// a line is a run of them of one size, all full but perhaps the last, all with names or none. So a row, a form and a
/// phrase ("4 of 250ml with 64ml") say the same.
/// </summary>
/// <param name="Count">How many.</param>
/// <param name="Size">What each holds when full.</param>
/// <param name="Last">What goes into the last; null for a full one, or what is left.</param>
/// <param name="Names">What is written on them; none for running numbers.</param>
internal sealed record LikeBottles(int Count, Quantity Size, Quantity? Last, IReadOnlyList<string> Names)
{
    /// <summary>The most bottles of one line.</summary>
    public const int Most = 200;

    /// <summary>The bottles of lines, one by one.</summary>
    public static IReadOnlyList<FilledBottle> Each(IEnumerable<LikeBottles> lines) =>
    [
        .. lines.SelectMany(line => Enumerable.Range(0, line.Count).Select(i =>
            new FilledBottle(line.Size, i == line.Count - 1 ? line.Last : null, line.Names.ElementAtOrDefault(i)))),
    ];

    /// <summary>The lines of bottles, the fewest that say them.</summary>
    public static IEnumerable<LikeBottles> Of(IReadOnlyList<FilledBottle> bottles)
    {
        for (int first = 0, next; first < bottles.Count; first = next)
        {
            next = first + 1;
            while (next < bottles.Count && next - first < Most && bottles[next - 1].Amount is null
                && bottles[next].Size == bottles[first].Size
                && bottles[next].Name is null == bottles[first].Name is null)
                next++;
            yield return new(
                next - first, bottles[first].Size, bottles[next - 1].Amount,
                [.. bottles.Skip(first).Take(next - first).Select(bottle => bottle.Name).OfType<string>()]);
        }
    }
}

/// <summary>The fields of a line of bottles.</summary>
internal static class BottleFields
{
    private static readonly Field<int> Count = new("bottles", Notations.Whole(1, LikeBottles.Most))
    {
        Help = "how many bottles of that size; otherwise one", Example = "4", Width = 5,
    };

    private static readonly Field<Quantity> Size = new("size_ml", Notations.Amount((_, _) => Unit.Millilitre))
    {
        Label = "Each holds, ml", Help = "what one holds when it is full", Example = "250", IsNeeded = true, Width = 8,
        Keyword = "of", MayLackKeyword = true,
    };

    private static readonly Field<Quantity> Last = new("last_ml", Notations.Amount((_, _) => Unit.Millilitre))
    {
        Label = "In the last, ml", Help = "what goes into the last; otherwise what is left, at most a full one",
        Example = "", Width = 8, Keyword = "with",
    };

    private static readonly Field<IReadOnlyList<string>> Names = new("names", new(
        (text, read, terms) => Words.Read(text, read, terms) is { IsRead: true } names
            && names.Value.Count != (read.Maybe(Count) ?? 1)
            ? Parsed.Not<IReadOnlyList<string>>(
                $"one name for each bottle, with blanks between: {read.Maybe(Count) ?? 1}")
            : Words.Read(text, read, terms),
        (names, terms) => Words.Write(names, terms)) { Placeholder = "NAMES", Divider = " " })
    {
        Help = "what is written on them, one name for each; otherwise running numbers", Example = "", Width = 40,
        Keyword = "as",
    };

    private static Notation<IReadOnlyList<string>> Words => Notations.Names("NAMES");

    /// <summary>The line: into which bottles.</summary>
    /// <param name="isNeeded">Whether there must be one.</param>
    public static LineKind Line(bool isNeeded) => new LineKind<LikeBottles>
    {
        Name = "into",
        Help = "the bottles that are filled, once for each size: how many, the size, what goes into the last, their "
            + "names",
        IsNeeded = isNeeded,
        Bound =
        [
            new(Count, line => line.Count), new(Size, line => line.Size), new(Last, line => line.Last),
            new(Names, line => Given.Names(line.Names)),
        ],
        With = values => new(values.Maybe(Count) ?? 1, values.Of(Size), values.Maybe(Last), values.Find(Names) ?? []),
    };
}

/// <summary>record decanting, decantings.csv: a bottle is filled into smaller ones.</summary>
internal static class DecantingKind
{
    private static readonly Field<string> From = new("from", Notations.Known("BOTTLE"))
    {
        Help = "the bottle, such as syrup/1; or an item, for the bottle used first", Example = "syrup", IsNeeded = true,
        IsArgument = true, Width = 16,
        Choices = (_, holdings) =>
        [
            .. holdings.Containers.Where(bottle => bottle.Held.Unit == Unit.Millilitre).Select(bottle => bottle.Code),
            .. holdings.Items.Where(item => item.Unit == Unit.Millilitre).Select(item => item.Code),
        ],
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<Decanting>
    {
        Name = "decanting",
        Caution = UsualCautions.Handling,
        File = "decantings",
        Title = "Decant",
        Purpose = "Records that a bottle is filled into smaller ones; each keeps from that day on.",
        Details =
        [
            "Fill them to the brim where possible; the last takes what is left. Label every bottle, and never use one "
                + "that looks like a bottle for food or drink. Wear gloves and eye protection.",
        ],
        Example = "paperfix/2 --into \"4 of 250ml\"",
        Bound = [new(From, entry => entry.From)],
        Line = BottleFields.Line(isNeeded: true),
        Lines = entry => LikeBottles.Of(entry.Bottles),
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, From = values.Of(From),
            Bottles = LikeBottles.Each(values.LinesOf<LikeBottles>()),
        },
    };
}

/// <summary>
/// record stock-solution, stock_solutions.csv: a powder or concentrate is mixed into a stock solution.
/// </summary>
internal static class StockSolutionKind
{
    private static readonly Field<string> Item = new("item", Notations.Known("ITEM"))
    {
        Label = "Stock solution", Help = "the stock solution's own item", Example = "fine-stock", IsNeeded = true,
        IsArgument = true, Width = 16,
        Choices = (_, holdings) => Stocks(holdings), Offer = (_, holdings) => Stocks(holdings).FirstOrDefault(),
    };

    private static readonly Field<Volume> Made = new("volume_ml", Notations.Volume)
    {
        Label = "Made, ml", Option = "--volume", Help = "how much stock solution is made, such as 1l", Example = "1000",
        IsNeeded = true, IsArgument = true,
        Width = 8,
    };

    private static readonly Field<string> From = new("from", Notations.Known("ITEM"))
    {
        Label = "Mixed from", Option = "--of", Help = "the powder or concentrate; otherwise what its item says",
        Example = "fine-powder", Width = 16,
        Choices = Offered.Chemicals,
        Offer = (read, holdings) => read.Find(Item) is { } code ? holdings.Item(code)?.StockOf : null,
    };

    private static readonly Field<int> Packs = new("packs", Notations.Whole(1, 1000))
    {
        Help = "how many packs are mixed whole; otherwise one", Example = "1", Width = 5,
    };

    private static readonly Field<Quantity> Amount = new("amount", Notations.AmountOf(
        (read, terms) =>
            (read.Find(From) ?? (read.Find(Item) is { } stock ? terms.ItemOf(stock)?.StockOf : null)) is { } source
                ? terms.ItemOf(source) : null, Unit.Gram))
    {
        Label = "or weighed", Help = "a weighed amount, in the unit of what it is mixed from, in place of whole packs",
        Example = "", Width = 8,
    };

    private static readonly Field<string> Pack = new("container", Notations.Known("PACK"))
    {
        Label = "From pack", Option = "--from", Help = "the pack to take; otherwise the one used first",
        Example = "fine-powder/1",
        Choices = Offered.Clear,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<StockSolution>
    {
        Name = "stock-solution",
        Caution = UsualCautions.Handling,
        File = "stock_solutions",
        Title = "Mix a stock solution",
        Purpose = "Records a stock solution mixed from powder or concentrate, with its own cost, mixing date and life.",
        Details = [$"Do not breathe the dust. {UsualCautions.OnPaper}"],
        Example = "rinsal-stock 1l --of rinsal --amount 100g --into \"2 of 500ml\"",
        ExampleNeeds = ["item rinsal-stock --kind chemical --pack 1l"],
        Bound =
        [
            new(Item, entry => entry.Item), new(Made, entry => entry.Volume), new(From, entry => entry.From),
            new(Packs, entry => entry.Packs == 1 ? null : entry.Packs), new(Amount, entry => entry.Amount),
            new(Pack, entry => entry.Container),
        ],
        Line = BottleFields.Line(isNeeded: false),
        Lines = entry => LikeBottles.Of(entry.Bottles),
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Item = values.Of(Item), Volume = values.Of(Made),
            From = values.Find(From),
            Packs = values.Maybe(Packs) ?? 1, Amount = values.Maybe(Amount), Container = values.Find(Pack),
            Bottles = LikeBottles.Each(values.LinesOf<LikeBottles>()),
        },
    };

    private static IEnumerable<string> Stocks(Holdings holdings) => holdings.ItemsOf(ItemKind.Chemical)
        .Where(item => item is { Unit: Unit.Millilitre, StockOf: not null }).Select(item => item.Code);
}
