using Ledger.Core.Baths;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Keeping;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Kinds;

/// <summary>record bath, baths.csv: a working solution is mixed that will be used again.</summary>
internal static class BathKind
{
    private static readonly Field<string> Bath = new("bath", Notations.Name("BATH"))
    {
        Help = "a name of its own, never used before, such as F3", Example = "F3", IsNeeded = true, IsArgument = true,
        Width = 10,
        Offer = (_, holdings) => holdings.Baths.LastOrDefault() is { } last
            ? NextName.After(last.Code, name => holdings.Bath(name) is not null)
            : null,
    };

    private static readonly Field<string> Item = new("item", Notations.Known("ITEM"))
    {
        Label = "Mixed from", Help = "the item it is mixed from", Example = "tarnfix", IsNeeded = true,
        IsArgument = true, Width = 16,
        Choices = (_, holdings) => Mixable(holdings).Select(item => item.Code),
        Offer = (_, holdings) => holdings.Baths.LastOrDefault()?.Item
            ?? Mixable(holdings).FirstOrDefault(item => item.Role == ItemRole.Fixer)?.Code,
    };

    private static readonly Field<Volume> WorkingVolume = new("working_ml", Notations.Volume)
    {
        Label = "Made, ml", Option = "--volume", Help = "how much working solution is made, such as 1500ml or 1.5l",
        Example = "1500", IsNeeded = true,
        IsArgument = true, Width = 8,
        Offer = (read, holdings) => Like(read, holdings) is { } like
            ? $"{Scaled.ToText(like.WorkingVolume.Millilitres, 3)} ml"
            : null,
    };

    private static readonly Field<Dilution> Dilution = new("dilution", Notations.Dilution)
    {
        Help = "how it is diluted, such as 1+4; otherwise as the item usually is", Example = "1+4", Width = 10,
        Offer = (read, holdings) =>
            Like(read, holdings)?.Dilution.Text
                ?? (read.Find(Item) is { } code ? holdings.Item(code)?.Dilution?.Text : null),
    };

    private static readonly Field<Quantity> Amount =
        SharedFields.Measured((read, terms) => read.Find(Item) is { } code ? terms.ItemOf(code) : null);

    private static readonly Field<BathMaterial> Material = new("material", Words.Materials)
    {
        Label = "For", Help = "what will pass through it, film or paper, which never share a bath; otherwise film",
        Example = "film", Width = 6,
        Choices = (_, _) => Words.Materials.Words,
        Offer = (read, holdings) => (Like(read, holdings)?.Material ?? BathMaterial.Film).Name(),
    };

    private static readonly Field<string> PairedWith = new("paired_with", Notations.Known("BATH"))
    {
        Label = "Second after",
        Help = "two-bath fixing: the first bath of the pair; nothing for a bath alone or for the first itself",
        Example = "", Width = 10,
        Choices = (_, holdings) => holdings.WorkingBaths.Where(bath => holdings.SecondAfter(bath) is null)
            .Select(bath => bath.Code),
    };

    private static readonly Field<WorkingContainer> StandsIn = new("stands_in", Words.Containers)
    {
        Label = "Kept in", Help = "what it stands in between sessions; otherwise a full bottle",
        Example = "full bottle", Width = 16,
        Choices = (_, _) => Words.Containers.Words,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<BathMixing>
    {
        Name = "bath",
        Caution = UsualCautions.Handling,
        File = "baths",
        Title = "Mix a bath",
        Purpose = "Records a working solution that is mixed and used again: fixer, stop bath, wash aid.",
        Details =
        [
            "For two-bath fixing, mix the second bath and name the first. Wear gloves and eye protection and see to "
                + "fresh air; the maker's safety data sheet and local rules govern.",
        ],
        Example = "F6 tarnfix 1.5l --dilution 1+4",
        Bound =
        [
            new(Bath, entry => entry.Bath), new(Item, entry => entry.Item),
            new(WorkingVolume, entry => entry.WorkingVolume),
            new(Dilution, entry => entry.Dilution), new(Amount, entry => entry.Amount),
            new(Material, entry => entry.Material == BathMaterial.Film ? null : entry.Material),
            new(SharedFields.Capacity, entry => entry.Capacity?.PerLitre),
            new(SharedFields.Basis, entry => Given.Text(entry.Capacity?.Basis)),
            new(PairedWith, entry => entry.PairedWith),
            new(StandsIn, entry => entry.StandsIn == WorkingContainer.FullBottle ? null : entry.StandsIn),
            new(SharedFields.Bottle, entry => entry.Container),
            new(SharedFields.BookDifference, entry => Given.Yes(entry.BooksDifference)),
        ],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Bath = values.Of(Bath), Item = values.Of(Item),
            WorkingVolume = values.Of(WorkingVolume), Dilution = values.Find(Dilution), Amount = values.Maybe(Amount),
            Material = values.Of(Material),
            Capacity = SharedFields.CapacityOf(values), PairedWith = values.Find(PairedWith),
            StandsIn = values.Of(StandsIn),
            Container = values.Find(SharedFields.Bottle), BooksDifference = values.Of(SharedFields.BookDifference),
        },
    };

    private static IEnumerable<Item> Mixable(Holdings holdings) =>
        holdings.ItemsOf(ItemKind.Chemical).Where(item => item.Role != ItemRole.Water);

    /// <summary>The last bath that was mixed from the item.</summary>
    private static Bath? Like(FieldValues read, Holdings holdings) => holdings.Baths.LastOrDefault(
        bath => bath.Item.Equals(read.Find(Item), StringComparison.OrdinalIgnoreCase));
}

/// <summary>
/// record rotation, rotations.csv: a pair goes on by one step. What is not said is as the bath that moves up has it.
/// </summary>
internal static class RotationKind
{
    private const string Usual = "rotated";

    private static readonly Field<string> NewBath = new("new_bath", Notations.Name("BATH"))
    {
        Help = "a name of its own for the bath that is mixed, never used before, such as F6", Example = "F6",
        IsNeeded = true, IsArgument = true, Width = 10,
        Offer = (read, holdings) => PairOf(read, holdings) is { } first && holdings.SecondAfter(first) is { } second
            ? NextName.After(second.Code, name => holdings.Bath(name) is not null) : null,
    };

    private static readonly Field<string> Bath = new("bath", Notations.Known("BATH"))
    {
        Label = "Pair of", Help = "either bath of the pair; not needed while there is only one pair", Example = "F4",
        Width = 10,
        Choices = (_, holdings) => Pairs(holdings).Select(first => first.Code),
        Offer = (_, holdings) => Pairs(holdings).FirstOrDefault()?.Code,
    };

    private static readonly Field<string> Item = new("item", Notations.Known("ITEM"))
    {
        Label = "Mixed from", Help = "what the new bath is mixed from; otherwise as the one that moves up",
        Example = "", Width = 16,
        Choices = Offered.Chemicals,
    };

    private static readonly Field<Volume> WorkingVolume = new("working_ml", Notations.Volume)
    {
        Label = "Made, ml", Option = "--volume", Help = "how much is made; otherwise as much as before", Example = "",
        Width = 8,
    };

    private static readonly Field<Quantity> Amount = SharedFields.Measured(
        (read, terms) => read.Find(Item) is { } code
            ? terms.ItemOf(code)
            : read.Find(Bath) is { } bath ? terms.HeldIn(bath) : null);

    private static readonly Field<string> Reason = new("reason", Notations.Line(200))
    {
        Help = "why the first bath is discarded; otherwise: rotated", Example = "its capacity is used", Width = 30,
        Choices = (_, _) => [Usual, "its capacity is used", "clearing takes twice as long", "expired"],
    };

    private static readonly Field<string> Jug = SharedFields.JugFor(
        (read, holdings) => PairOf(read, holdings) is { } first ? WasteKinds.Of(first.Role) : null, (_, _) => true);

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<Rotation>
    {
        Name = "rotation",
        Caution = UsualCautions.Handling,
        File = "rotations",
        Title = "Rotate the pair",
        Purpose = "Goes on with two-bath fixing: the first bath is discarded, the second moves up, and a new second "
            + "bath is mixed.",
        Details =
        [
            "Each bath keeps its own mixing date. The setting rotation-ceiling says how often a pair is rotated before "
                + "a fresh pair is mixed.",
            "Used fixer holds silver: local rules and the maker's safety data sheet say where it may go. Wear gloves "
                + "and eye protection.",
        ],
        Example = "F6 --bath F4 --jug J2",
        ExampleNeeds = ["setting rotation-ceiling 4"],
        Bound =
        [
            new(NewBath, entry => entry.NewBath), new(Bath, entry => entry.Bath), new(Item, entry => entry.Item),
            new(WorkingVolume, entry => entry.WorkingVolume), new(SharedFields.Dilution, entry => entry.Dilution),
            new(Amount, entry => entry.Amount),
            new(SharedFields.Capacity, entry => entry.Capacity?.PerLitre),
            new(SharedFields.Basis, entry => Given.Text(entry.Capacity?.Basis)),
            new(Reason, entry => entry.Reason == Usual ? null : entry.Reason),
            new(Jug, entry => entry.Jug),
            new(SharedFields.Bottle, entry => entry.Container),
            new(SharedFields.BookDifference, entry => Given.Yes(entry.BooksDifference)),
        ],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, NewBath = values.Of(NewBath),
            Bath = values.Find(Bath),
            Item = values.Find(Item), WorkingVolume = values.Maybe(WorkingVolume),
            Dilution = values.Find(SharedFields.Dilution),
            Amount = values.Maybe(Amount), Capacity = SharedFields.CapacityOf(values),
            Reason = values.Find(Reason) ?? Usual,
            Jug = values.Find(Jug), Container = values.Find(SharedFields.Bottle),
            BooksDifference = values.Of(SharedFields.BookDifference),
        },
    };

    /// <summary>The first bath of the pair that was named, by either of its baths.</summary>
    private static Bath? PairOf(FieldValues read, Holdings holdings) => read.Find(Bath) is { } named
        ? Pairs(holdings).FirstOrDefault(first => first == holdings.Bath(named)
            || holdings.SecondAfter(first) == holdings.Bath(named))
        : Pairs(holdings).FirstOrDefault();

    private static IEnumerable<Bath> Pairs(Holdings holdings) =>
        holdings.WorkingBaths.Where(bath => holdings.SecondAfter(bath) is not null);
}

/// <summary>record top-up, top_ups.csv: fresh solution or replenisher goes into a bath.</summary>
internal static class TopUpKind
{
    private static readonly Field<string> Bath = new("bath", Notations.Known("BATH"))
    {
        Help = "the bath", Example = "D1", IsNeeded = true, IsArgument = true, Width = 10, Choices = Offered.Baths,
        Offer = (read, holdings) => Offered.Baths(read, holdings).FirstOrDefault(),
    };

    private static readonly Field<Volume> Added = new("added_ml", Notations.Volume)
    {
        Label = "Added, ml", Option = "--added", Help = "the fresh solution that goes in, such as 80ml", Example = "80",
        IsNeeded = true, IsArgument = true,
        Width = 8,
        Offer = (read, holdings) => Of(read, holdings) is { } bath
            && new BathReading(bath, holdings.AsOf).Replenishment is { } due && due.Due > default(Volume)
            ? $"{Scaled.ToText(due.Due.RoundedTo(holdings.Settings.Tray.Graduate ?? Volume.FromMillilitres(0.1m))
                .Millilitres, 3)} ml"
            : null,
    };

    private static readonly Field<string> Item = new("item", Notations.Known("ITEM"))
    {
        Label = "Made from", Help = "the item of the fresh solution or replenisher; otherwise the bath's own",
        Example = "replenisher", Width = 16,
        Choices = Offered.Chemicals, Offer = (read, holdings) => Of(read, holdings)?.Item,
    };

    private static readonly Field<Dilution> Dilution = new("dilution", Notations.Dilution)
    {
        Help = "how it is diluted; 1+0 for a ready replenisher; otherwise as the bath", Example = "1+0", Width = 10,
    };

    private static readonly Field<Quantity> Amount = SharedFields.Measured(
        (read, terms) => (read.Find(Item) ?? read.Find(Bath)) is { } code
            ? terms.ItemOf(code) ?? terms.HeldIn(code)
            : null);

    private static readonly Field<Volume> Bled = new("poured_off_ml", Notations.Volume)
    {
        Label = "Taken out, ml", Option = "--poured-off",
        Help = "used solution taken out first to make room; it goes into a jug", Example = "", Width = 8,
    };

    private static readonly Field<string> Jug = SharedFields.JugFor(
        (read, holdings) => Of(read, holdings) is { } bath ? WasteKinds.Of(bath.Role) : null,
        (read, _) => read.Maybe(Bled) > default(Volume));

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<TopUp>
    {
        Name = "top-up",
        Caution = UsualCautions.Handling,
        File = "top_ups",
        Title = "Replenish or top up",
        Purpose = "Adds fresh solution to a bath: replenisher for a developer, working solution or water for what the "
            + "film carried out.",
        Details = ["The bath's capacity stays what it was, because what the film left in it is still there."],
        Example = "F4 100ml",
        Bound =
        [
            new(Bath, entry => entry.Bath), new(Added, entry => entry.Added), new(Item, entry => entry.Item),
            new(Dilution, entry => entry.Dilution),
            new(Amount, entry => entry.Amount), new(Bled, entry => entry.Bled == default ? null : entry.Bled),
            new(Jug, entry => entry.Jug), new(SharedFields.Bottle, entry => entry.Container),
            new(SharedFields.BookDifference, entry => Given.Yes(entry.BooksDifference)),
        ],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Bath = values.Of(Bath), Added = values.Of(Added),
            Item = values.Find(Item),
            Dilution = values.Find(Dilution), Amount = values.Maybe(Amount), Bled = values.Of(Bled),
            Jug = values.Find(Jug),
            Container = values.Find(SharedFields.Bottle), BooksDifference = values.Of(SharedFields.BookDifference),
        },
    };

    private static Bath? Of(FieldValues read, Holdings holdings) =>
        read.Find(Bath) is { } code ? holdings.Bath(code) : null;
}
