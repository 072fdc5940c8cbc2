using Ledger.Core.Baths;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Core.Planning;

/// <summary>
/// A session before it is held: what goes where and when, whether there is enough of everything, and what it will cost.
/// </summary>
public sealed record SessionPlan
{
    /// <summary>What was asked for.</summary>
    public required PlanRequest Request { get; init; }

    /// <summary>The day it is planned for: stock must still be good then.</summary>
    public required LocalDate Day { get; init; }

    /// <summary>The process.</summary>
    public required Process Process { get; init; }

    /// <summary>The batches, in order.</summary>
    public required IReadOnlyList<PlannedBatch> Batches { get; init; }

    /// <summary>The trays, in order.</summary>
    public required IReadOnlyList<PlannedTray> Trays { get; init; }

    /// <summary>
    /// Everything that must be at hand, and the containers it is drawn from; what goes into baths that are to be mixed
    /// first is among it.
    /// </summary>
    public required IReadOnlyList<PlannedUse> Uses { get; init; }

    /// <summary>What the session itself uses up: that without the baths to be mixed.</summary>
    public required IReadOnlyList<PlannedUse> UsedUp { get; init; }

    /// <summary>What is short.</summary>
    public required IReadOnlyList<Shortage> Shortages { get; init; }

    /// <summary>The baths before and after.</summary>
    public required IReadOnlyList<BathOutlook> Baths { get; init; }

    /// <summary>What it will cost at the prices of today's lots.</summary>
    public required PlanCost Cost { get; init; }

    /// <summary>
    /// What the user should think of: short times, thin developer, shallow trays, sheets that could not be spread.
    /// </summary>
    public required IReadOnlyList<string> Advice { get; init; }

    /// <summary>The usual cautions, and those of the chemicals in use.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>
    /// Whether there is enough of everything that is usable, and as far as that can be said capacity left in the baths.
    /// </summary>
    public bool CanRun => Shortages.Count == 0 && Baths.All(bath => bath.Fits != false);

    /// <summary>Whether there are parts of solutions that no item stands for.</summary>
    public bool HasUnknownParts { get; init; }

    /// <summary>Whether it can be said of every bath that it fits, and of every solution what goes into it.</summary>
    public bool IsSure => !HasUnknownParts && Baths.All(bath => bath.Fits is not null);

    /// <summary>All sheets and rolls, without dummies.</summary>
    public int Sheets => Batches.Sum(batch => batch.Sheets.Count);

    /// <summary>The area of all sheets, without dummies.</summary>
    public Area Area => Batches.Aggregate(Area.Zero, (sum, batch) => sum + batch.Area);

    /// <summary>
    /// The session as the plan promises it: one line for each batch, every container in the order in which it was
    /// suggested. The user changes what differed before it is posted.
    /// </summary>
    /// <param name="key">The entry's key.</param>
    /// <param name="session">The session's name.</param>
    /// <param name="date">The day on which it was held.</param>
    public SessionLog ToLog(string key, string session, LocalDate date) => new()
    {
        Key = key,
        Date = date,
        Session = session,
        Process = Process.Name,
        Bath = SessionBaths.Typed(Baths.Where(bath => bath.IsFirst).Select(bath => bath.Bath)
            .OfType<Bath>()) is { Length: > 0 } baths ? baths : null,
        DrawFirst = [.. UsedUp.SelectMany(use => use.Draws).Select(draw => draw.From.Code).Distinct()],
        Lines = [.. Batches.SelectMany(SessionLines.Of)],
    };
}
