using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Core.Journal.Rules;

/// <summary>A negative is named a keeper, often long after its session.</summary>
internal static class KeeperNamingRules
{
    public static void Post(KeeperNaming keeper, Draft draft)
    {
        var sheet = draft.Past.Developed(keeper.Negative.Trim()) ?? throw new RefusedException(
            RefusalKind.Unknown, $"there is no negative \"{keeper.Negative}\"; `show sessions` lists them");
        if (sheet.Fate == Fate.Keeper)
            throw new RefusedException(RefusalKind.AlreadyThere, $"{sheet.Negative} is a keeper already");
        Require.That(sheet.Fate == Fate.Negative, $"sheet {sheet.Id} became a {sheet.Fate.Name()}, not a negative");
        Require.That(
            keeper.Date >= sheet.Date, $"{sheet.Negative} was developed on {Dates.Text(sheet.Date)}, after {Dates.Text(keeper.Date)}");
        draft.Add(new KeeperNamed(sheet.Id));
        draft.Summary = $"{sheet.Negative} is a keeper";
    }
}
