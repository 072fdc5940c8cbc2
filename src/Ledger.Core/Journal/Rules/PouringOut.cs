using Ledger.Core.Baths;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>A bath goes: what is in it is written off, and its volume goes into a jug when one is named.</summary>
internal static class PouringOut
{
    public static void Of(Bath bath, string reason, string? jug, Draft draft)
    {
        foreach (var content in bath.Contents)
            draft.Add(new Movement(content.Lot, bath.Place, Places.UsedUp, content.Quantity.Base, content.Value));
        draft.Add(new BathEnded(bath.Place, bath.Code, reason));
        if (jug is { Length: > 0 })
            JugRules.Fill(draft.Jug(jug), bath.WorkingVolume, Name(bath), bath.Material, draft);
        else if (draft.Holdings.Jugs.FirstOrDefault(open => open.Room >= bath.WorkingVolume) is { } open)
            draft.Remark($"jug {open.Code} ({open.Contents}) has room for it: {open.Room.ToText(draft.Style)}");
    }

    /// <summary>What a jug's list says of it: "film fixer F1".</summary>
    public static string Name(Bath bath) => $"{bath.Material.Name()} {bath.Role.Name()} {bath.Code}";
}
