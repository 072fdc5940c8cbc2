using Ledger.Core.Baths;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Kinds;

/// <summary>Fields that mean the same in several kinds.</summary>
internal static class SharedFields
{
    private const string Disposal = "the maker's safety data sheet and local rules say where it may go";

    /// <summary>The bottle to draw from.</summary>
    public static Field<string> Bottle { get; } = new("container", Notations.Known("BOTTLE"))
    {
        Label = "From bottle", Option = "--from", Help = "the bottle to draw from; otherwise the one used first",
        Example = "tarnfix/2",
        Choices = Offered.Clear,
    };

    /// <summary>How a solution is diluted.</summary>
    public static Field<Dilution> Dilution { get; } = new("dilution", Notations.Dilution)
    {
        Help = "how it is diluted, such as 1+4; otherwise the usual one", Example = "1+4", Width = 10,
    };

    /// <summary>
    /// What a litre of working solution can take. An item that is defined again keeps its own; a bath is not offered
    /// it, it follows its item.
    /// </summary>
    public static Field<Area> Capacity { get; } = new("capacity_sq_in_per_litre", Notations.SquareInches)
    {
        Label = "Capacity, sq in/litre", Option = "--capacity",
        Help = "what a litre can take, in square inches of film; otherwise the item's own",
        Example = "2000", Width = 8,
        Offer = (read, holdings) => ItemDefinitionKind.CapacityOf(read, holdings) is { } known
            ? Scaled.ToText(known.PerLitre.SquareInches, 6) : null,
    };

    /// <summary>Where that figure comes from; what is known of it goes with the figure that is known.</summary>
    public static Field<string> Basis { get; } = new("capacity_basis", new(
        (text, read, _) => !read.Has(Capacity) ? Parsed.Not<string>("nothing: a basis stands only beside a capacity")
            : text.Length <= 200 ? text : Parsed.Not<string>("a text of at most 200 characters"),
        (text, _) => text) { Placeholder = "TEXT" })
    {
        Label = "Basis", Option = "--basis", Help = "where the capacity comes from: maker's, handbook, strict, own",
        Example = "handbook", Width = 12,
        Choices = (_, _) => ["maker's", "handbook", "strict", "own"],
        Offer = (read, holdings) => ItemDefinitionKind.CapacityOf(read, holdings) is { } known
            && read.Maybe(Capacity) == known.PerLitre
            ? known.Basis : null,
    };

    /// <summary>Whether more may be used than the ledger holds.</summary>
    public static Field<bool> BookDifference { get; } = new("book_difference", Notations.YesNo)
    {
        Label = "Book the difference",
        Help = "where more is used than the ledger holds, book the difference as found by a count", Example = "no",
        Width = 4,
    };

    /// <summary>
    /// The waste jug that takes a solution: only jugs for its kind of waste are offered, the first with room where
    /// something goes into one.
    /// </summary>
    /// <param name="waste">The kind of waste that is read so far; null when it is not known, and then every jug is
    /// offered and none written.</param>
    /// <param name="isUsed">Whether what is read so far goes into a jug as a rule.</param>
    public static Field<string> JugFor(Func<FieldValues, Holdings, WasteKind?> waste,
        Func<FieldValues, Holdings, bool> isUsed)
    {
        return new("jug", Notations.Known("JUG"))
        {
            Label = "Into jug",
            Help = $"the waste jug it goes into, of its own kind of waste; nothing for elsewhere; {Disposal}",
            Example = "J2", Width = 10, Choices = (read, holdings) => Alike(read, holdings).Select(jug => jug.Code),
            Offer = (read, holdings) => isUsed(read, holdings) && waste(read, holdings) is not null
                ? Alike(read, holdings).FirstOrDefault(jug => jug.Room > default(Volume))?.Code : null,
        };

        IEnumerable<WasteJug> Alike(FieldValues read, Holdings holdings) =>
            holdings.Jugs.Where(jug => waste(read, holdings) is not { } kind || jug.Waste == kind);
    }

    /// <summary>Holder sides.</summary>
    public static Field<IReadOnlyList<string>> Sides(Func<FieldValues, Holdings, IEnumerable<string>> choices) =>
        new("sides", Notations.Names("SIDE"))
        {
            Help = "holder sides such as E07-2, or holders for all their sides", Example = "E07-2 E08", IsNeeded = true,
            IsArgument = true,
            Width = 44, Choices = choices,
        };

    /// <summary>What was measured out of an item: in its unit, otherwise what the dilution asks for.</summary>
    public static Field<Quantity> Measured(Func<FieldValues, ReadingTerms, Item?> item) => new(
        "concentrate_ml", Notations.AmountOf(item, Unit.Millilitre))
    {
        Label = "Measured out", Option = "--amount", Example = "300ml", Width = 8,
        Help = "what was measured out, in the item's unit or another: 300ml, 40g; otherwise what the dilution asks for",
    };

    /// <summary>Why.</summary>
    /// <param name="help">What it is.</param>
    /// <param name="example">An example.</param>
    /// <param name="width">How many columns a form gives it.</param>
    /// <param name="offer">What a form writes into it; null for nothing.</param>
    /// <param name="usual">The usual ones, to choose from.</param>
    public static Field<string> Reason(string help, string example, int width = 20, string? offer = null,
        string[]? usual = null) =>
        new("reason", Notations.Line(200))
        {
            Help = help, Example = example, IsNeeded = true, Width = width,
            Choices = usual is null ? null : (_, _) => usual, Offer = offer is null ? null : (_, _) => offer,
        };

    /// <summary>The capacity that was said, with its basis.</summary>
    public static Capacity? CapacityOf(FieldValues values) =>
        values.Maybe(Capacity) is { } perLitre ? new(perLitre, values.Find(Basis) ?? "") : null;
}
