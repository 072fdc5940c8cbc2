namespace Ledger.Exchange.Print;

/// <summary>
/// A card for the wall: the areas of the formats, what they come to in sheets of 8x10, and the capacities of the baths
/// in use.
/// </summary>
public static class WallCard
{
    /// <summary>The card of a ledger.</summary>
    public static PrintedPage Of(Holdings holdings)
    {
        var style = holdings.Settings.Style;
        var own = holdings.ItemsOf(ItemKind.Film).Select(item => item.Format).OfType<Format>();
        var formats = holdings.Formats.All.Concat(own).Distinct().OrderBy(format => format.Area).ToList();
        return new(
            $"Areas and baths, {Dates.Text(holdings.AsOf)}",
            [
                new Paragraph(UsualCautions.OnPaper),
                new Grid(
                    ["format", "sq in", "cm²", "in sheets of 8x10", "to one 8x10"],
                    [.. formats.Select(Row)]),
                new Paragraph("A roll of 120 or 135-36 counts as one 8x10 by convention."),
                new Heading("Baths in use"),
                .. Baths(holdings, style),
                new Heading("In the tray"),
                new Points(Tray(holdings.Settings.Tray)),
                new Points([.. UsualCautions.Sentences, UsualCautions.Governs], AreCautions: true),
            ]) { IsClose = true };
    }

    private static IReadOnlyList<string> Row(Format format)
    {
        var unit = format.Area.SquareInches / Area.Unit80.SquareInches;
        return
        [
            format.Code, Scaled.ToText(format.Area.SquareInches, 2), Scaled.ToText(format.Area.SquareCentimetres, 1),
            Scaled.ToText(unit, 3), Scaled.ToText(1 / unit, 2),
        ];
    }

    private static IEnumerable<PageBlock> Baths(Holdings holdings, MeasureStyle style)
    {
        if (!holdings.Baths.Any())
        {
            yield return new Paragraph("No bath is in use.");
            yield break;
        }

        yield return new Grid(
            ["bath", "what", "capacity", "left", "sheets of 8x10", "good until"],
            [.. holdings.Baths.Select(bath => Row(new BathReading(bath, holdings.AsOf),
                holdings.Formats.Find("8x10"), style))]);
    }

    private static IReadOnlyList<string> Row(BathReading reading, Format full, MeasureStyle style)
    {
        var bath = reading.Bath;
        var capacity = bath.TotalCapacity is { } area ? $"{area.ToText(style)} ({bath.Capacity!.Basis})" : "not set";
        return
        [
            bath.Code, $"{bath.Item} {bath.Dilution}, {bath.WorkingVolume.ToText(style)}, {bath.Material.Name()}",
            capacity, reading.EndedBy is { } end ? end.State() : reading.Remaining?.ToText(style) ?? "not known",
            reading.RemainingSheets(full) is { } sheets ? Scaled.ToText(sheets, 0) : "not known",
            reading.GoodUntil is { } good ? Dates.Text(good.Date) : "no limit is set",
        ];
    }

    private static readonly Format[] Shown = [Format.Parse("8x10"), Format.Parse("11x14")];

    private static IReadOnlyList<string> Tray(TrayPractice tray) =>
    [
        $"At most {Counted.Of(tray.Limit.Sheets, "sheet")} of 8x10 in a batch; a full shuffle takes "
            + $"{tray.FullShuffleSeconds} s.",
        .. Shown.Select(format => $"{Scaled.ToText(tray.LeastIn(format).Litres, 2)} l of solution for {format} "
            + $"stand {Scaled.ToText(tray.DepthTenths / 10m, 1)} mm deep."),
    ];
}
