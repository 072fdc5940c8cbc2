using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Kinds;

/// <summary>
/// record item, items.csv: a product that is kept, with its settings. What a form offers is what the item has now.
/// </summary>
internal static class ItemDefinitionKind
{
    private const decimal MostDays = 36_500;

    private static readonly Field<string> Code = new("item", Notations.Name("ITEM"))
    {
        Help = "the short code that commands, labels and files use, such as fen80", Example = "fen80", IsNeeded = true,
        IsArgument = true,
        Width = 16,
    };

    private static readonly Field<string> Name = new("name", Notations.Line(200))
    {
        Help = "the full name, as it stands on the box; otherwise the code", Example = "Corvane Fen 80", Width = 36,
        Offer = Known(item => item.Name),
    };

    private static readonly Field<ItemKind> Sort = new("kind", Words.ItemKinds)
    {
        Help = "film, chemical or supply; paper is film", Example = "film", IsNeeded = true, Width = 10,
        Choices = (_, _) => Words.ItemKinds.Words, Offer = Known(item => item.Kind.Name()),
    };

    private static readonly Field<ItemRole> Role = new("role", Words.ItemRoles)
    {
        Help = "what a chemical does, or which paper it is; otherwise other", Example = "other", Width = 14,
        Choices = (read, _) => Words.ItemRoles.Words.Where(word => Suits(word, read.Maybe(Sort))),
        Offer = Known(item => item.Role.Name()),
    };

    private static readonly Field<Format> Format = new("format", Notations.Format)
    {
        Help = $"the format of film or paper: {FormatTable.Accepted}, or one of your own", Example = "8x10", Width = 10,
        Choices = Offered.Formats, Offer = Known(item => item.Format?.Code),
    };

    private static readonly Field<Unit> Unit = new("unit", Words.Units)
    {
        Label = "Unit",
        Help = "what it is counted in; otherwise as its format is, ml for a chemical, piece for a supply",
        Example = "sheet", Width = 6, Choices = (_, _) => Words.Units.Words, Offer = Known(item => item.Unit.Name()),
    };

    private static readonly Field<Quantity> Pack = new("pack", Notations.Amount((read, _) => UnitOf(read)))
    {
        Help = "what one pack holds, in its unit: 25, 1l", Example = "25", IsNeeded = true, Width = 8,
        Offer = Known(item => Amount(item.Pack)),
    };

    private static readonly Field<Dilution> Dilution = new("dilution", Notations.Dilution)
    {
        Help = "how it is usually diluted: one part and so many of water, 1+49", Example = "1+49", Width = 10,
        Offer = Known(item => item.Dilution?.Text),
    };

    private static readonly Field<IReadOnlyList<string>> OtherParts = new("other_parts", Notations.LongNames("ITEMS"))
    {
        Label = "Part B",
        Help = "the item that is part B of a dilution such as 1+2+100; of a third part too, with a comma between",
        Example = "tan-b", Width = 14, Choices = Offered.Chemicals,
        Offer = Known(item => string.Join(", ", item.OtherParts)),
    };

    private static readonly Field<Volume> Minimum = new("minimum_ml_per_80_sq_in", Notations.Volume)
    {
        Label = "Least ml", Option = "--minimum-per-80",
        Help = "the least concentrate for each 80 square inches of film, whatever the dilution",
        Example = "6", Width = 8, Offer = Known(item => Ml(item.MinimumPer80SquareInches)),
    };

    private static readonly Field<decimal> FixerFactor = new("fixer_factor", Notations.Number(0.1m, 10, 3))
    {
        Help = "how much of a fixer's capacity the film uses: 1 for conventional grain, about 1.5 for tabular grain",
        Example = "1", Width = 6,
        Offer = Known(item => Given.Number(item.FixerFactorThousandths / 1000m)),
    };

    private static readonly Field<int> Sealed = Days(
        "sealed_days", "Days sealed", "days it keeps sealed, from its delivery; the expiry date may be earlier",
        item => item.Keeping.SealedDays);

    private static readonly Field<int> OpenedFull = Days(
        "opened_full_days", "Opened", "days it keeps from its opening", item => item.Keeping.OpenedFullDays);

    private static readonly Field<int> OpenedPart = Days(
        "opened_part_days", "Below half", "days it keeps from when it fell below half full",
        item => item.Keeping.OpenedPartDays);

    private static readonly Field<int> WorkingFull = Days(
        "working_full_days", "Days mixed", "days its working solution keeps in a full closed bottle",
        item => item.Keeping.WorkingFullDays);

    private static readonly Field<int> WorkingPart = Days(
        "working_part_days", "Part-full", "days its working solution keeps in a part-full bottle",
        item => item.Keeping.WorkingPartDays);

    private static readonly Field<int> TrayHours = Days(
        "tray_hours", "Hours in a tray", "hours its working solution keeps in an open tray",
        item => item.Keeping.TrayHours);

    private static readonly Field<int> FloatingLid = Days(
        "floating_lid_days", "Days, lid", "days its working solution keeps under a floating lid",
        item => item.Keeping.FloatingLidDays);

    private static readonly Field<int> Freezer = Cold(
        "freezer_days", "Freezer days",
        "days that a year in the freezer adds to its date, up to 365; otherwise the ledger's setting",
        365, item => item.FreezerDays);

    private static readonly Field<int> Fridge = Cold(
        "fridge_days", "Fridge days",
        "days that a year in the fridge adds to its date, up to 365; otherwise the ledger's setting",
        365, item => item.FridgeDays);

    private static readonly Field<int> Thaw = Cold(
        "thaw_hours", "Warm-up hours",
        "hours that a box warms up closed after the freezer; otherwise the ledger's setting",
        240, item => item.ThawHours);

    private static readonly Field<int> LeadTime = new("lead_time_days", Notations.Whole(0, 3650))
    {
        Label = "Delivery days", Help = "days from the order to the delivery", Example = "14", Width = 5,
        Offer = Known(item => Given.Number(item.LeadTimeDays)),
    };

    private static readonly Field<decimal> ServiceLevel = new("service_level",
        Notations.Number(0.000001m, 0.999999m, 6, "SHARE"))
    {
        Help = "service level: how often stock should last until the delivery, such as 0.95 for 95 of 100 times",
        Example = "0.95", Width = 6, Offer = Known(item => Given.Number(item.ServiceLevel)),
    };

    private static readonly Field<Quantity> MinimumOnHand = new("minimum_on_hand",
        Notations.Amount((read, _) => UnitOf(read)))
    {
        Label = "Minimum", Help = "your own lower limit: less than this calls for an order", Example = "25", Width = 8,
        Offer = Known(item => item.MinimumOnHand is { } minimum ? Amount(minimum) : null),
    };

    private static readonly Field<string> Formula = new("formula", Notations.Line(200))
    {
        Help = "the maker's formula version, where a changed recipe keeps differently", Example = "", Width = 30,
        Offer = Known(item => item.Formula),
    };

    private static readonly Field<string> Cautions = new("cautions", Notations.Line(10_000))
    {
        Help = "cautions from the maker's safety data sheet; printed on labels and cards", Example = "", Width = 60,
        Offer = Known(item => item.Cautions),
    };

    private static readonly Field<decimal> Density = new("density_g_per_ml", Notations.Number(0.5m, 5, 3, "G/ML"))
    {
        Label = "Density", Option = "--density",
        Help = "grams per millilitre, so that a thick concentrate can be weighed out", Example = "1.32", Width = 6,
        Offer = Known(item => Given.Number(item.Density?.GramsPerMillilitre)),
    };

    private static readonly Field<Quantity> DeadVolume = new("dead_volume", Notations.Amount((read, _) => UnitOf(read)))
    {
        Label = "Not drawn", Help = "what stays in each bottle because it cannot be drawn", Example = "4", Width = 6,
        Offer = Known(item => item.DeadVolume is { } dead ? Amount(dead) : null),
    };

    private static readonly Field<Volume> Replenisher = new("replenisher_ml_per_80_sq_in", Notations.Volume)
    {
        Label = "Replenisher", Option = "--replenisher-per-80", Help = "replenisher for each 80 square inches of film",
        Example = "30", Width = 6,
        Offer = Known(item => Ml(item.ReplenisherPer80SquareInches)),
    };

    private static readonly Field<int> Ceiling = new("replenisher_ceiling_percent", Notations.Whole(1, 10_000))
    {
        Label = "Ceiling %", Option = "--replenisher-ceiling", Example = "100", Width = 5,
        Help = "how much replenisher a bath may take before a fresh one is mixed, in percent of its volume; otherwise "
            + "100",
        Offer = Known(item => Given.Number(item.ReplenisherCeilingPercent)),
    };

    private static readonly Field<string> Indicator = new("indicator", Notations.Line(60))
    {
        Help = "the colour at which its indicator says that a bath of it is exhausted, such as purple",
        Example = "purple", Width = 10,
        Offer = Known(item => item.Indicator),
    };

    private static readonly Field<string> StockOf = new("stock_of", Notations.Known("ITEM"))
    {
        Label = "Mixed from", Help = "the powder or concentrate that this stock solution is mixed from",
        Example = "fine-powder", Width = 14,
        Choices = Offered.Chemicals, Offer = Known(item => item.StockOf),
    };

    private static readonly Field<IReadOnlyList<Capacity>> Others = new("other_capacities", new(
        (text, _, _) => Capacities(text) is { } capacities ? capacities
            : Parsed.Not<IReadOnlyList<Capacity>>(
                "square inches per litre and their basis, with semicolons between: 1600 maker's; 1000 strict"),
        (capacities, _) => string.Join("; ", capacities.Select(Capacity))) { Placeholder = "CAPACITY", Divider = "; " })
    {
        Label = "Other bases", Option = "--other-capacity",
        Help = "the capacity on other bases, to be read beside it: 1600 maker's; 1000 strict",
        Example = "1600 maker's; 1000 strict", Width = 40,
        Offer = Known(item => string.Join("; ", item.OtherCapacities.Select(Capacity))),
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<ItemDefinition>
    {
        Name = "item",
        File = "items",
        Title = "Item",
        Purpose = "Defines a product that you keep, or changes its settings.",
        Details =
        [
            "Only its code, its kind and its pack must be said. Limits come from the maker's data sheet or your own "
                + "tests; what is not said sets no limit. What happened before keeps the settings it was recorded "
                + "with.",
        ],
        Example = "fen80 --kind film --format 8x10 --pack 25",
        IsDated = false,
        NamedBy = Code,
        IsReplaceable = true,
        Bound =
        [
            Of(Code, item => item.Code), Of(Name, item => item.Name), Of(Sort, item => item.Kind),
            Of(Role, item => item.Role == ItemRole.Other ? null : item.Role), Of(Format, item => item.Format),
            Of(Unit, item => item.Unit),
            Of(Pack, item => item.Pack), Of(Dilution, item => item.Dilution),
            Of(SharedFields.Capacity, item => item.Capacity?.PerLitre),
            Of(SharedFields.Basis, item => Given.Text(item.Capacity?.Basis)),
            Of(Others, item => item.OtherCapacities.Count == 0 ? null : item.OtherCapacities),
            Of(Minimum, item => item.MinimumPer80SquareInches),
            Of(FixerFactor, item => item.FixerFactorThousandths / 1000m),
            Of(Sealed, item => item.Keeping.SealedDays), Of(OpenedFull, item => item.Keeping.OpenedFullDays),
            Of(OpenedPart, item => item.Keeping.OpenedPartDays), Of(WorkingFull, item => item.Keeping.WorkingFullDays),
            Of(WorkingPart, item => item.Keeping.WorkingPartDays),
            Of(FloatingLid, item => item.Keeping.FloatingLidDays),
            Of(TrayHours, item => item.Keeping.TrayHours), Of(LeadTime, item => item.LeadTimeDays),
            Of(ServiceLevel, item => item.ServiceLevel),
            Of(MinimumOnHand, item => item.MinimumOnHand), Of(Density, item => item.Density?.GramsPerMillilitre),
            Of(DeadVolume, item => item.DeadVolume), Of(Replenisher, item => item.ReplenisherPer80SquareInches),
            Of(Ceiling, item => item.ReplenisherCeilingPercent), Of(Indicator, item => item.Indicator),
            Of(StockOf, item => item.StockOf), Of(OtherParts, item => Given.Names(item.OtherParts)),
            Of(Freezer, item => item.FreezerDays), Of(Fridge, item => item.FridgeDays),
            Of(Thaw, item => item.ThawHours), Of(Formula, item => Given.Text(item.Formula)),
            Of(Cautions, item => Given.Text(item.Cautions)),
        ],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note,
            Item = new()
            {
                Code = values.Of(Code), Name = values.Find(Name) ?? values.Of(Code), Kind = values.Of(Sort),
                Role = values.Of(Role),
                Format = values.Find(Format), Unit = UnitOf(values), Pack = values.Of(Pack),
                Dilution = values.Find(Dilution),
                Capacity = SharedFields.CapacityOf(values), OtherCapacities = values.Find(Others) ?? [],
                MinimumPer80SquareInches = values.Maybe(Minimum),
                FixerFactorThousandths = (int)((values.Maybe(FixerFactor) ?? 1) * 1000),
                Keeping = new(
                    values.Maybe(Sealed), values.Maybe(OpenedFull), values.Maybe(OpenedPart), values.Maybe(WorkingFull),
                    values.Maybe(WorkingPart), values.Maybe(TrayHours), values.Maybe(FloatingLid)),
                LeadTimeDays = values.Maybe(LeadTime), ServiceLevel = values.Maybe(ServiceLevel),
                MinimumOnHand = values.Maybe(MinimumOnHand),
                Density = values.Maybe(Density) is { } density ? Measures.Density.Of(density) : null,
                DeadVolume = values.Maybe(DeadVolume),
                ReplenisherPer80SquareInches = values.Maybe(Replenisher),
                ReplenisherCeilingPercent = values.Maybe(Ceiling),
                Indicator = values.Find(Indicator), StockOf = values.Find(StockOf),
                OtherParts = values.Find(OtherParts) ?? [],
                FreezerDays = values.Maybe(Freezer), FridgeDays = values.Maybe(Fridge), ThawHours = values.Maybe(Thaw),
                Formula = values.Find(Formula) ?? "",
                Cautions = values.Find(Cautions) ?? "",
            },
        },
    };

    /// <summary>The capacity of the item that is defined again; null where another kind of entry is read.</summary>
    internal static Capacity? CapacityOf(FieldValues read, Holdings holdings) =>
        read.Find(Code) is { } code ? holdings.Item(code)?.Capacity : null;

    private static FieldOf<ItemDefinition> Of(Field field, Func<Item, object?> get) =>
        new(field, definition => get(definition.Item));

    private static Func<FieldValues, Holdings, string?> Known(Func<Item, string?> text) =>
        (read, holdings) => read.Find(Code) is { } code && holdings.Item(code) is { } item ? text(item) : null;

    private static Field<int> Cold(string name, string label, string help, int most, Func<Item, int?> known) =>
        new(name, Notations.Whole(0, most))
        {
            Label = label, Help = help, Example = "", Width = 5, Offer = Known(item => Given.Number(known(item))),
        };

    private static Field<int> Days(string name, string label, string help, Func<Item, int?> known) =>
        new(name, Notations.Whole(1, (int)MostDays))
        {
            Label = label, Help = help, Example = "365", Width = 6, Offer = Known(item => Given.Number(known(item))),
        };

    /// <summary>The unit that was said; or that of its format, of the pack of a chemical, or of its kind.</summary>
    private static Unit UnitOf(FieldValues values) =>
        values.Maybe(Unit) ?? values.Find(Format)?.Unit ?? values.Of(Sort) switch
        {
            ItemKind.Film => Measures.Unit.Sheet,
            ItemKind.Chemical => values.Maybe(Pack) is { Unit: Measures.Unit.Gram }
                ? Measures.Unit.Gram
                : Measures.Unit.Millilitre,
            _ => Measures.Unit.Piece,
        };

    private static bool Suits(string role, ItemKind? kind)
    {
        var isPaper = role.EndsWith("paper", StringComparison.Ordinal);
        return role == "other" || kind switch { ItemKind.Film => isPaper, ItemKind.Chemical => !isPaper,
            ItemKind.Supply => false, _ => true };
    }

    private static string Amount(Quantity quantity) => $"{Scaled.ToText(quantity.Value, 3)} {quantity.Unit.Plural()}";

    private static string? Ml(Volume? volume) =>
        volume is { } known ? $"{Scaled.ToText(known.Millilitres, 3)} ml" : null;

    private static string Capacity(Capacity capacity) =>
        $"{Scaled.ToText(capacity.PerLitre.SquareInches, 6)} {capacity.Basis}";

    private static List<Capacity>? Capacities(string text)
    {
        var capacities = new List<Capacity>();
        foreach (var part in text.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (part.Split(' ', 2, StringSplitOptions.TrimEntries) is not [var figure, { Length: > 0 and <= 200 } basis]
                || Numbers.Read(figure, out _) is not (>= 0.0001m and < 10_000_000 and var perLitre))
                return null;
            capacities.Add(new(Area.FromSquareInches(perLitre), basis));
        }

        return capacities.Count == 0 ? null : capacities;
    }
}
