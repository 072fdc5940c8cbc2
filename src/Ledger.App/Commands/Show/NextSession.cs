using Ledger.Core.Journal;

namespace Ledger.App.Commands.Show;

/// <summary>What another session like the last one would cost today.</summary>
/// <param name="Like">The last session's name.</param>
/// <param name="Estimate">What it would cost; null when it could not be held.</param>
/// <param name="Obstacle">Why it could not; null when it could.</param>
internal sealed record NextSession(string Like, SessionEstimate? Estimate, string? Obstacle)
{
    /// <summary>Reads it; null when no session was held yet, or when the ledger is looked at as it stood on another day.</summary>
    public static NextSession? Of(View view)
    {
        if (view.AsOf != view.Ledger.Today || view.Ledger.Sessions(view.AsOf, null, 1) is not [var last])
            return null;
        return view.Ledger.Preview(SessionEstimate.Another(last, view.AsOf)) switch
        {
            Accepted accepted => new(last.Session, SessionEstimate.Of(accepted.Posting, view.Holdings), null),
            Refused refused => new(last.Session, null, refused.Refusal.Sentence),
            var other => throw new InvalidOperationException($"the rules answered with {other}"),
        };
    }
}
