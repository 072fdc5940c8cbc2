using Ledger.Core.Measures;
using Ledger.Core.Stock;
using NodaTime;

namespace Ledger.Exchange.Print;

/// <summary>The seal of a box of exposed film.</summary>
public static class BoxLabel
{
    /// <summary>What must be read before such a box is opened.</summary>
    public const string Warning = "open in total darkness only";

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
            count is { } sheets ? film.Of(sheets).ToString() : $"____ {film.Unit.Plural()}",
            $"sealed {Dates.Text(date)}",
        ],
        ["Take this label off when the box is empty."],
        Warning);

    /// <summary>A page of labels.</summary>
    public static PrintedPage Page(IReadOnlyList<Label> labels, LabelSheet sheet) => new("Labels for exposed boxes", [new Labels(labels, sheet)]);
}
