using Ledger.Core.Film;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Tracing;

namespace Ledger.Core.Faults;

/// <summary>What rejects are divided by.</summary>
public enum FaultGrouping
{
    /// <summary>By what spoiled them.</summary>
    Cause,

    /// <summary>By the holder side that they were loaded into.</summary>
    Side,

    /// <summary>By the emulsion number of the film.</summary>
    Number,

    /// <summary>By the process of the session.</summary>
    Process,

    /// <summary>By the month of the session.</summary>
    Month,
}

/// <summary>The rejects of a side, an emulsion number, a process, a month, or of one cause.</summary>
/// <param name="Name">Which.</param>
/// <param name="Sheets">The sheets that were developed and were to become negatives: tests and practice are left
/// out.</param>
/// <param name="Rejects">Those that are rejects now; of a side only those that a holder spoils, or whose cause nobody
/// said.</param>
public sealed record FaultRow(string Name, int Sheets, int Rejects)
{
    /// <summary>The share of rejects, in per cent; null without a sheet.</summary>
    public decimal? Percent => Sheets == 0 ? null : 100m * Rejects / Sheets;

    /// <summary>What spoiled them, with how many of each.</summary>
    public IReadOnlyList<(string Cause, int Sheets)> Causes { get; init; } = [];

    /// <summary>The chance of so many rejects here or more, if it is no worse than the others; null where it is not
    /// compared.</summary>
    public double? Chance { get; init; }

    /// <summary>Whether so few sheets say little, whatever the share: a rule of the program's own.</summary>
    public bool IsFew => Sheets < FaultsOverTime.FewSheets;

    /// <summary>The causes in words: "2 fogged, 1 dust".</summary>
    public string CausesText => string.Join(", ", Causes.Select(cause => $"{cause.Sheets} {cause.Cause}"));

    /// <summary>Whether it is worse than the others, in words; empty where it is not compared or has no more rejects
    /// than they have.</summary>
    /// <param name="others">The rows that it is compared with and itself.</param>
    public string Verdict(int others) => Chance is not { } chance || Rejects == 0
        ? (IsFew && Sheets > 0 ? "few sheets" : "")
        : (chance <= FaultsOverTime.Rare
            ? $"worse than the others; would happen by chance {FisherExact.InWords(chance)}"
                + (others > 2 ? $", and to one of {others} {FisherExact.InWords(Math.Min(1, chance * others))}" : "")
            : $"may be chance: {FisherExact.InWords(chance)}")
            + (IsFew ? "; few sheets" : "");
}

/// <summary>Rejects over time: by cause, holder side, film, process and month, with the share of sheets, and whether
/// one is worse than the others beyond chance.</summary>
public sealed class FaultsOverTime
{
    /// <summary>Below so many sheets a share says little.</summary>
    public const int FewSheets = 20;

    /// <summary>What chance does less often than this is said to be worse: once in 20, the usual level.</summary>
    public const double Rare = 0.05;

    private readonly List<SheetCard> _sheets;

    /// <summary>Reads the rejects of a period.</summary>
    /// <param name="cards">The sheets; those that were developed in the period count.</param>
    /// <param name="from">The first day.</param>
    /// <param name="to">The last day.</param>
    public FaultsOverTime(IEnumerable<SheetCard> cards, LocalDate from, LocalDate to)
    {
        (From, To) = (from, to);
        _sheets =
        [
            .. cards.Where(card => card.DevelopedOn >= from && card.DevelopedOn <= to
                && card.Fate is Fate.Negative or Fate.Keeper or Fate.Reject),
        ];
    }

    /// <summary>The first day.</summary>
    public LocalDate From { get; }

    /// <summary>The last day.</summary>
    public LocalDate To { get; }

    /// <summary>The sheets that count.</summary>
    public int Sheets => _sheets.Count;

    /// <summary>Those that are rejects now.</summary>
    public int Rejects => _sheets.Count(IsReject);

    /// <summary>cause, side, number, process, month.</summary>
    public static IReadOnlyList<string> Groupings { get; } = ["cause", "side", "number", "process", "month"];

    /// <summary>The rows: months in order, all others with the largest share first.</summary>
    public IReadOnlyList<FaultRow> By(FaultGrouping grouping) => grouping switch
    {
        FaultGrouping.Cause =>
        [
            .. _sheets.Where(IsReject).GroupBy(CauseOf).OrderByDescending(group => group.Count())
                .ThenBy(group => group.Key, StringComparer.Ordinal)
                .Select(group => new FaultRow(group.Key, Sheets, group.Count())),
        ],
        FaultGrouping.Month => [.. Rows(Month, IsReject, isCompared: false)
            .OrderBy(row => row.Name, StringComparer.Ordinal)],
        FaultGrouping.Side => Worst(Rows(card => card.Side, IsOfTheHolder, isCompared: true)),
        FaultGrouping.Number => Worst(Rows(card => card.Emulsion.Length > 0 ? $"{card.Item} {card.Emulsion}" : null,
            IsReject, isCompared: true)),
        _ => Worst(Rows(card => card.Process, IsReject, isCompared: true)),
    };

    private static IReadOnlyList<FaultRow> Worst(IEnumerable<FaultRow> rows) =>
        [.. rows.OrderBy(row => row.Chance ?? 1).ThenByDescending(row => row.Percent)
            .ThenBy(row => row.Name, StringComparer.OrdinalIgnoreCase)];

    private IEnumerable<FaultRow> Rows(Func<SheetCard, string?> name, Func<SheetCard, bool> isBad, bool isCompared)
    {
        var known = _sheets.Where(card => name(card) is not null).ToList();
        var bad = known.Count(isBad);
        foreach (var group in known.GroupBy(card => name(card)!, StringComparer.OrdinalIgnoreCase))
        {
            var (all, spoiled) = (group.Count(), group.Where(isBad).ToList());
            yield return new(group.Key, all, spoiled.Count)
            {
                Causes = [.. spoiled.GroupBy(CauseOf).OrderByDescending(cause => cause.Count())
                    .Select(cause => (cause.Key, cause.Count()))],
                Chance = isCompared && known.Count > all
                    ? FisherExact.Worse(spoiled.Count, all, bad - spoiled.Count, known.Count - all) : null,
            };
        }
    }

    private static bool IsReject(SheetCard card) => card.Fate == Fate.Reject;

    private static bool IsOfTheHolder(SheetCard card) => IsReject(card) && card.Cause?.IsOfTheHolder() != false;

    private static string CauseOf(SheetCard card) => card.Cause?.Name() ?? "not said";

    private static string Month(SheetCard card) =>
        string.Create(CultureInfo.InvariantCulture,
            $"{card.DevelopedOn!.Value.Year:0000}-{card.DevelopedOn.Value.Month:00}");
}
