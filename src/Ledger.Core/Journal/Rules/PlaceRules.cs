using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Rules;

/// <summary>Which entry another one of the same day may come before.</summary>
internal static class PlaceRules
{
    /// <summary>The entry that is named by its number or its reference.</summary>
    public static JournalEntry Before(string before, LocalDate date, IPast past)
    {
        var isNumber = long.TryParse(before, NumberStyles.None, CultureInfo.InvariantCulture, out var number);
        var target = UndoRules.Find(number, isNumber ? null : before, past);
        Require.That(
            !ActRules.IsAct(target),
            $"entry {target.Number} takes back or amends entry {target.Undoes ?? target.Amends} and has no place of "
                + "its own; "
            + $"name entry {target.Undoes ?? target.Amends}");
        Require.That(
            target.IsSaid,
            $"entry {target.Number} was posted by an earlier version and stays where it is; nothing can be put before "
                + "it");
        Require.That(
            target.Date == date,
            $"entry {target.Number} is of {Dates.Text(target.Date)}, this one of {Dates.Text(date)}; an order can be "
                + "chosen within a day only");
        return target;
    }
}
