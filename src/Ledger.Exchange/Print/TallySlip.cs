namespace Ledger.Exchange.Print;

/// <summary>
/// A slip beside a bath: a box for each sheet of 8x10 that it can still take, to be crossed out with a pencil.
/// </summary>
public static class TallySlip
{
    private const int MostBoxes = 200;

    /// <summary>The slip of a bath.</summary>
    /// <param name="reading">The bath as it stands.</param>
    /// <param name="films">The films and papers that are in the ledger; those of the bath's material count.</param>
    /// <param name="style">The units of the user.</param>
    public static PrintedPage Of(BathReading reading, IEnumerable<Item> films, MeasureStyle style)
    {
        var bath = reading.Bath;
        return new(
            $"Tally of bath {bath.Code}",
            [
                new Paragraph(UsualCautions.OnPaper),
                new Paragraph(
                    $"{bath.Role.Name()} for {bath.Material.Name()}, {bath.WorkingVolume.ToText(style)} of "
                        + $"{bath.Item} {bath.Dilution}, mixed {Dates.Text(bath.MixedOn)}"),
                new Paragraph(reading.GoodUntil is { } good
                    ? $"Good until {Dates.Text(good.Date)} at the latest."
                    : "No limit of age is set."),
                .. Room(reading, style),
                new Heading("What a sheet counts"),
                new Grid(
                    [bath.Material.Name(), "format", "area", "boxes"],
                    [.. films.Where(film => film.Format is not null
                        && film.IsPaper == (bath.Material == BathMaterial.Paper))
                        .Select(film => (IReadOnlyList<string>)
                    [
                        film.Name, film.Format!.Code, film.Format.Area.ToText(style),
                        Scaled.ToText(film.Format.Area.Weighted(film.FixerFactorThousandths).SquareInches
                            / Area.Unit80.SquareInches, 2),
                    ])]),
                new Blanks(["clearing test: film", "seconds, fresh", "seconds today", "date"]),
                new Points([.. UsualCautions.Sentences, UsualCautions.Governs], AreCautions: true),
            ]);
    }

    private static IEnumerable<PageBlock> Room(BathReading reading, MeasureStyle style)
    {
        if (reading.EndedBy is { } end)
        {
            yield return new Paragraph($"It is {end.State()}: do not use it again.");
            yield break;
        }

        if (reading.Remaining is not { } left)
        {
            yield return new Paragraph("No capacity is set; a box is a sheet of 8x10, or 80 square inches.");
            yield return new PencilBoxes(40);
            yield break;
        }

        var whole = left.Hundredths / Area.Unit80.Hundredths;
        yield return new Paragraph(
            $"{reading.Bath.WorkedWeighted.ToText(style)} of its {reading.Bath.TotalCapacity!.Value.ToText(style)} "
                + "capacity are used "
            + $"({reading.Bath.Capacity!.Basis}); {left.ToText(style)} are left. A box is a sheet of 8x10, or 80 "
            + "square inches:");
        yield return new PencilBoxes((int)Math.Min(MostBoxes, whole));
        if (whole > MostBoxes)
            yield return new Paragraph($"{whole - MostBoxes} more boxes have no room on this slip.");
    }
}
