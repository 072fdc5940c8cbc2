namespace Ledger.Exchange.Print;

/// <summary>The seal of a box of film: exposed, or still to be exposed.</summary>
public static class BoxLabel
{
    /// <summary>What must be read before such a box is opened.</summary>
    public const string Warning = "open in total darkness only";

    /// <summary>Paper for printing is opened under a safelight, where its maker says that it may be.</summary>
    private const string PaperWarning = "no white light: safelight as its maker says";

    private static string WarningOf(Item film) => film.IsPaper ? PaperWarning : Warning;

    /// <summary>The label of a box.</summary>
    /// <param name="film">The film.</param>
    /// <param name="group">The development group; may be empty.</param>
    /// <param name="count">How many sheets are in it; null to be filled in.</param>
    /// <param name="date">The day on which it was sealed.</param>
    public static Label Of(Item film, string group, int? count, LocalDate date) => new(
        $"{film.Name} {film.Format}",
        [
            "EXPOSED, not developed",
            $"group: {(group.Length > 0 ? group : "______")}",
            Counted(film, count),
            $"sealed {Dates.Text(date)}",
        ],
        [TakeOff],
        WarningOf(film));

    /// <summary>The label of a box of unexposed film that is in the ledger.</summary>
    /// <param name="film">The film.</param>
    /// <param name="box">The box.</param>
    public static Label Unexposed(Item film, Container box) => new(
        $"{film.Name} {film.Format}",
        [
            "UNEXPOSED",
            $"{box.Code}{(box.Lot.Batch.Length > 0 ? $", {box.Lot.NumberText(film.Kind)}" : "")}",
            box.OpenedOn is { } opened ? $"opened {Dates.Text(opened)}" : "opened ____-__-__",
            box.GoodUntil(film.Keeping) is { } good ? $"good until {Dates.Text(good.Date)} ({good.Rule.Name()})"
                : "good until ____-__-__",
            $"{film.Of(box.Size.Base)} when full",
        ],
        [TakeOff],
        WarningOf(film));

    /// <summary>The label of a box of unexposed film, to be filled in.</summary>
    /// <param name="film">The film.</param>
    /// <param name="count">How many sheets are in it; null to be filled in.</param>
    /// <param name="date">The day on which it was sealed.</param>
    public static Label Unexposed(Item film, int? count, LocalDate date) => new(
        $"{film.Name} {film.Format}",
        ["UNEXPOSED", "emulsion ____________", Counted(film, count), $"sealed {Dates.Text(date)}"],
        [TakeOff],
        WarningOf(film));

    private const string TakeOff = "Take this label off when the box is empty.";

    private static string Counted(Item film, int? count) =>
        count is { } sheets ? film.Of(sheets).ToString() : $"____ {film.Unit.Plural()}";

    /// <summary>A page of labels.</summary>
    public static PrintedPage Page(IReadOnlyList<Label> labels, LabelSheet sheet) =>
        new("Labels for film boxes", [new Labels(labels, sheet)]);
}
