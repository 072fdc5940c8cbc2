using Ledger.Core.Baths;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>A bath goes: what is in it is written off, and its volume goes where the user says.</summary>
internal static class BathDiscarding
{
    public static void Of(Bath bath, string reason, WayOut way, Draft draft)
    {
        foreach (var content in bath.Contents)
            draft.Add(new Movement(content.Lot, bath.Place, Places.UsedUp, content.Quantity.Base, content.Value));
        draft.Add(new BathEnded(bath.Place, bath.Code, reason));
        way.Take(Name(bath), bath.WorkingVolume, bath.Material, WasteKinds.Of(bath.Role), draft);
    }

    /// <summary>What a jug's list says of it: "film fixer F1".</summary>
    public static string Name(Bath bath) => $"{bath.Material.Name()} {bath.Role.Name()} {bath.Code}";
}
