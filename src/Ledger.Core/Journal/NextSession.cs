using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Core.Journal;

/// <summary>What another session like the last one would cost today.</summary>
/// <param name="Like">The last session's name.</param>
/// <param name="Estimate">What it would cost; null when it could not be held.</param>
/// <param name="Obstacle">Why it could not; null when it could.</param>
public sealed record NextSession(string Like, SessionEstimate? Estimate, string? Obstacle)
{
    /// <summary>
    /// Reads it; null when no session was held yet, or when the holdings are those of another day than today.
    /// </summary>
    public static NextSession? Of(ILedger ledger, Holdings holdings)
    {
        if (holdings.AsOf != ledger.Today || ledger.Sessions(holdings.AsOf, null, 1) is not [var last])
            return null;
        var again = SessionAgain.Of(last, ledger.Said(last.Number) as SessionLog, holdings) with { Anyway = true };
        return ledger.Preview(again) switch
        {
            Accepted accepted => new(last.Session, SessionEstimate.Of(accepted.Posting, holdings), null),
            Refused refused => new(last.Session, null, refused.Refusal.Sentence),
            var other => throw new InvalidOperationException($"the rules answered with {other}"),
        };
    }

    /// <summary>The same in a sentence.</summary>
    public string Sentence(MeasureStyle style) => Estimate is { } cost
        ? $"Another session like {Like} would cost {cost.Total.Text(style)} at today's lots, "
            + $"{cost.PerSheet?.Text(style) ?? "-"} for each of {cost.Sheets}: film {cost.Film.Text(style)}, "
            + $"chemistry {(cost.Developer + cost.OtherChemistry).Text(style)}, "
            + $"baths {cost.Baths.Text(style)}, supplies {cost.Supplies.Text(style)}"
            + $"{(cost.IsComplete ? "." : "; what came without a price is not in it.")}"
        : $"Another session like {Like} could not be held today: {Obstacle}.";
}
