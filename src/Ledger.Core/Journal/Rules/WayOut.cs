using Ledger.Core.Baths;
using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Rules;

/// <summary>Where a solution goes that is discarded: into a waste jug, or to a place that takes it.</summary>
/// <param name="Jug">The jug; null for none.</param>
/// <param name="To">The place; null when none is said.</param>
internal sealed record WayOut(string? Jug, string? To)
{
    /// <summary>Puts it into the jug; where nothing is said, the user is told what could be.</summary>
    /// <param name="what">What it is, in words.</param>
    /// <param name="volume">How much.</param>
    /// <param name="material">What had passed through it; null when it is no bath.</param>
    /// <param name="waste">Its kind of waste.</param>
    /// <param name="draft">What is written.</param>
    public void Take(string what, Volume volume, BathMaterial? material, WasteKind waste, Draft draft)
    {
        Require.That(Jug is not { Length: > 0 } || To is not { Length: > 0 },
            $"name the jug that {what} goes into or the place that takes it, not both");
        if (Jug is { Length: > 0 } jug)
            JugRules.Fill(draft.Jug(jug), volume, what, material, waste, draft);
        else if (To is not { Length: > 0 })
            draft.Remark(
                draft.Holdings.Jugs.FirstOrDefault(open => open.Waste == waste && open.Room >= volume) is { } open
                    ? $"where {what} goes is not said: jug {open.Code} ({open.Contents}) has room for it, "
                        + $"{open.Room.ToText(draft.Style)}"
                    : $"where {what} goes is not said: name a jug for {waste.Name()} waste, or the place that takes "
                        + "it");
    }
}
