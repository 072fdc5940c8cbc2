using Ledger.Core.Film;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Tracing;

namespace Ledger.Exchange.Export;

/// <summary>The cards of sheets as rows of CSV.</summary>
public static class SheetTable
{
    /// <summary>The columns.</summary>
    public static IReadOnlyList<string> Columns { get; } =
    [
        "sheet", "negative", "date", "subject", "film", "format", "batch", "box", "side", "group", "loaded_on",
            "exposed_on", "session", "developed_on",
        "in_batch", "process", "baths", "fate", "cause", "place", "filed_in", "last_finding",
    ];

    /// <summary>The row of a sheet.</summary>
    public static IReadOnlyList<string?> Row(SheetCard card) =>
    [
        card.Id.ToString(), card.Negative, Day(card.Date), card.Subject, card.Item, card.Format, card.Emulsion,
            card.Box, card.Side, card.Group,
        Day(card.LoadedOn), Day(card.ExposedOn), card.Session, Day(card.DevelopedOn), card.Batch is { } batch
            ? Scaled.ToText(batch, 0) : null, card.Process,
        string.Join(" ", card.Baths), card.Fate?.Name(), card.Cause?.Name(), card.Place, card.FiledIn,
            card.LastFinding?.Text,
    ];

    private static string? Day(NodaTime.LocalDate? date) => date is { } day ? Dates.Text(day) : null;
}
