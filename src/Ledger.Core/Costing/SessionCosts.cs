using Ledger.Core.Measures;

namespace Ledger.Core.Costing;

/// <summary>
/// What the sessions of a period cost, sheet by sheet. What a session used is shared out as it comes and then let go:
/// of ten years only the sheets are held.
/// </summary>
public sealed class SessionCosts
{
    private readonly List<SheetCost> _sheets = [];

    /// <summary>The cost of every developed sheet, in order.</summary>
    public IReadOnlyList<SheetCost> Sheets => _sheets;

    /// <summary>The chemistry of all sessions: one-shot, and the baths by area share.</summary>
    public Money Chemistry { get; private set; }

    /// <summary>The supplies of all sessions.</summary>
    public Money Supplies { get; private set; }

    /// <summary>The costs of sessions, in order.</summary>
    public static SessionCosts Of(IEnumerable<SessionUse> sessions)
    {
        var costs = new SessionCosts();
        foreach (var session in sessions)
            costs.Add(session);
        return costs;
    }

    /// <summary>Adds the next session.</summary>
    public void Add(SessionUse session)
    {
        _sheets.AddRange(SheetCost.Of(session));
        Chemistry += session.Developer + session.OtherChemistry + session.BathUsedUp;
        Supplies += session.Supplies;
    }
}
