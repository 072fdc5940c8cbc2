using System.Globalization;
using Ledger.Core.Journal;
using Ledger.Core.Keeping;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Terminal.Forms;

/// <summary>An item's settings as fields.</summary>
/// <param name="holdings">What the ledger knows.</param>
internal sealed class ItemFields(Holdings holdings)
{
    public FormField Code { get; } = new("Item", 14) { Hint = "The short name on labels and in commands: letters, digits, dots, dashes." };

    public FormField Name { get; } = new("name", 40);

    public FormField Kind { get; } = new("Kind", 9, FieldKind.Choice) { Choices = () => ItemNames.Kinds };

    public FormField Role { get; } = new("does", 14, FieldKind.Choice)
    {
        Choices = () => ["", .. ItemNames.Roles], Hint = "What a chemical does, or the kind of paper.",
    };

    public FormField Format { get; } = new("format", 12, FieldKind.Choice)
    {
        Choices = () => holdings.Formats.All.Select(format => format.Code), Hint = $"Of film or paper: {FormatTable.Accepted}.",
    };

    public FormField Pack { get; } = new("Pack", 8, FieldKind.Figure) { Hint = "What one pack holds." };

    public FormField Unit { get; } = new("counted in", 6, FieldKind.Choice) { Choices = () => Units.Names };

    public FormField Dilution { get; } = new("dilution", 10) { Hint = "Such as 1+49." };

    public FormField Capacity { get; } = new("Capacity", 8, FieldKind.Figure) { Hint = "Square inches per litre of working solution." };

    public FormField Basis { get; } = new("basis", 10, FieldKind.Choice) { Choices = () => ["maker's", "handbook", "strict", "own"] };

    public FormField Others { get; } = new("others", 26) { Hint = "On other bases, with semicolons between: 1600 maker's; 1000 strict." };

    public FormField Minimum { get; } = new("Least ml", 8, FieldKind.Figure) { Hint = "Concentrate for each 80 sq in, whatever the dilution." };

    public FormField Replenisher { get; } = new("replenisher ml", 8, FieldKind.Figure) { Hint = "For each 80 sq in." };

    public FormField Weight { get; } = new("loads a fixer", 5, FieldKind.Figure) { Hint = "Conventional film 1, tabular 1.5; empty for 1." };

    public FormField Sealed { get; } = new("Days", 5, FieldKind.Figure) { Hint = "Sealed, from the delivery." };

    public FormField OpenedFull { get; } = new("opened", 5, FieldKind.Figure) { Hint = "After opening, while at least half full." };

    public FormField OpenedPart { get; } = new("half full", 5, FieldKind.Figure) { Hint = "After it fell below half." };

    public FormField WorkingFull { get; } = new("Mixed", 5, FieldKind.Figure) { Hint = "Days after mixing, in a full closed bottle." };

    public FormField WorkingPart { get; } = new("part full", 5, FieldKind.Figure) { Hint = "Days after mixing, in a part-full bottle." };

    public FormField Lid { get; } = new("lid", 5, FieldKind.Figure) { Hint = "Days under a floating lid." };

    public FormField Tray { get; } = new("tray hours", 5, FieldKind.Figure) { Hint = "Hours in an open tray." };

    public FormField Lead { get; } = new("Delivery", 5, FieldKind.Figure) { Hint = "Days from order to delivery." };

    public FormField Service { get; } = new("service", 6, FieldKind.Figure) { Hint = "How often stock should last through a delivery time: 0.95." };

    public FormField Least { get; } = new("at least", 8, FieldKind.Figure) { Hint = "Your own lower limit; less calls for an order." };

    public FormField Density { get; } = new("g per ml", 6, FieldKind.Figure) { Hint = "So that a syrup can be weighed out." };

    public FormField Dead { get; } = new("not drawn", 8, FieldKind.Figure) { Hint = "What stays in each bottle." };

    public FormField StockOf { get; } = new("stock of", 14) { Hint = "The powder or concentrate that this stock solution is mixed from." };

    public FormField Formula { get; } = new("Formula", 20) { Hint = "The maker's version; a changed recipe has a life of its own." };

    public FormField Cautions { get; } = new("Cautions", 64) { Hint = "From your own safety data sheet." };

    /// <summary>Shows what is known of an item.</summary>
    public void Offer(Item item)
    {
        Code.Offer(item.Code);
        Name.Offer(item.Name);
        Kind.Offer(item.Kind.Name());
        Role.Offer(item.Role.Name());
        Format.Offer(item.Format?.Code);
        Pack.Offer(Text(item.Pack.Value));
        Unit.Offer(item.Unit.Name());
        Dilution.Offer(item.Dilution?.Text);
        Capacity.Offer(Text(item.Capacity?.PerLitre.SquareInches));
        Basis.Offer(item.Capacity?.Basis);
        Others.Offer(string.Join("; ", item.OtherCapacities.Select(other => $"{Text(other.PerLitre.SquareInches)} {other.Basis}")));
        Minimum.Offer(Text(item.MinimumPer80SquareInches?.Millilitres));
        Replenisher.Offer(Text(item.ReplenisherPer80SquareInches?.Millilitres));
        Weight.Offer(Text(item.FixerWeightThousandths / 1000m));
        Offer(item.Keeping);
        Lead.Offer(Text(item.LeadTimeDays));
        Service.Offer(item.ServiceLevel?.ToString(CultureInfo.InvariantCulture));
        Least.Offer(Text(item.MinimumOnHand?.Value));
        Density.Offer(Text(item.Density?.GramsPerMillilitre));
        Dead.Offer(Text(item.DeadVolume?.Value));
        StockOf.Offer(item.StockOf);
        Formula.Offer(item.Formula);
        Cautions.Offer(item.Cautions);
    }

    /// <summary>The item that the fields describe.</summary>
    public Item Read(Answers answers)
    {
        var unit = (Unit)answers.OneOf(Unit, Units.Names);
        return new()
        {
            Code = answers.Needed(Code),
            Name = Answers.Optional(Name) ?? Code.Text.Trim(),
            Kind = (ItemKind)answers.OneOf(Kind, ItemNames.Kinds),
            Role = Role.IsEmpty ? default : (ItemRole)answers.OneOf(Role, ItemNames.Roles),
            Format = ReadFormat(answers),
            Unit = unit,
            Pack = answers.Quantity(Pack, unit) ?? new(0, unit),
            Dilution = answers.Dilution(Dilution),
            Capacity = answers.OptionalFigure(Capacity) is { } area ? Of(area, Basis.Text.Trim(), Capacity, answers) : null,
            OtherCapacities = [.. ReadOthers(answers)],
            MinimumPer80SquareInches = answers.Volume(Minimum),
            ReplenisherPer80SquareInches = answers.Volume(Replenisher),
            FixerWeightThousandths = ReadWeight(answers),
            Keeping = new(
                Whole(Sealed, answers), Whole(OpenedFull, answers), Whole(OpenedPart, answers), Whole(WorkingFull, answers),
                Whole(WorkingPart, answers), Whole(Tray, answers), Whole(Lid, answers)),
            LeadTimeDays = Whole(Lead, answers),
            ServiceLevel = answers.OptionalFigure(Service),
            MinimumOnHand = answers.Quantity(Least, unit),
            Density = ReadDensity(answers),
            DeadVolume = answers.Quantity(Dead, unit),
            StockOf = Answers.Optional(StockOf),
            Formula = Formula.Text.Trim(),
            Cautions = Cautions.Text.Trim(),
        };
    }

    private void Offer(KeepingLimits limits)
    {
        Sealed.Offer(Text(limits.SealedDays));
        OpenedFull.Offer(Text(limits.OpenedFullDays));
        OpenedPart.Offer(Text(limits.OpenedPartDays));
        WorkingFull.Offer(Text(limits.WorkingFullDays));
        WorkingPart.Offer(Text(limits.WorkingPartDays));
        Tray.Offer(Text(limits.TrayHours));
        Lid.Offer(Text(limits.FloatingLidDays));
    }

    private Format? ReadFormat(Answers answers)
    {
        if (Format.IsEmpty)
            return null;
        if (!holdings.Formats.TryFind(Format.Text, out var format))
            answers.Problem(holdings.Formats.Unknown(Format.Text));
        return format;
    }

    private IEnumerable<Capacity> ReadOthers(Answers answers)
    {
        foreach (var part in Others.Text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var words = part.Split(' ', 2, StringSplitOptions.TrimEntries);
            if (words.Length == 2 && Figures.Parse(words[0]) is { } area && Of(area, words[1], Others, answers) is { } capacity)
                yield return capacity;
            else
                answers.Problem($"others: \"{part}\" is not accepted; write square inches per litre and their basis, such as 1600 maker's");
        }
    }

    private static Capacity? Of(decimal area, string basis, FormField field, Answers answers)
    {
        if (area is > 0 and < 10_000_000)
            return new(Area.FromSquareInches(area), basis);
        answers.Problem($"{field.Label}: it must be more than nothing and less than 10000000 sq in per litre");
        return null;
    }

    private int ReadWeight(Answers answers)
    {
        if (answers.OptionalFigure(Weight) is not { } weight)
            return 1000;
        if (Scaled.ToBase(weight, 1000) is { } thousandths and >= 100 and <= 10_000)
            return (int)thousandths;
        answers.Problem("loads a fixer: from 0.1 to 10, with three decimals at most");
        return 1000;
    }

    private Density? ReadDensity(Answers answers)
    {
        if (answers.OptionalFigure(Density) is not { } grams)
            return null;
        if (Core.Measures.Density.Of(grams) is { } density)
            return density;
        answers.Problem("g per ml: from 0.5 to 5, with three decimals at most");
        return null;
    }

    private static int? Whole(FormField field, Answers answers) => field.IsEmpty ? null : answers.Whole(field);

    private static string Text(decimal? number) => number is { } known ? Scaled.ToText(known, 6) : "";
}
