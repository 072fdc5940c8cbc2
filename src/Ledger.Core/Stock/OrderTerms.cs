using Ledger.Core.Measures;

namespace Ledger.Core.Stock;

/// <summary>How the user orders an item; what is null is not known and left out.</summary>
/// <param name="Item">The item's code.</param>
/// <param name="CoverDays">For how many days an order should last.</param>
/// <param name="WindowOpens">The first day of the yearly window in which the item can be ordered at all.</param>
/// <param name="WindowCloses">The last day of that window.</param>
/// <param name="OrderCost">What an order costs, however large it is: shipping, the trip to the shop.</param>
/// <param name="HoldingThousandths">What a year's keeping costs, in thousandths of the price.</param>
public sealed record OrderTerms(
    string Item, int? CoverDays, AnnualDate? WindowOpens, AnnualDate? WindowCloses, Money? OrderCost,
    int? HoldingThousandths)
{
    /// <summary>For how many days an order should last when the user has not said.</summary>
    public const int UsualCoverDays = 60;

    /// <summary>The terms of an item of which nothing was said.</summary>
    public static OrderTerms None(string item) => new(item, null, null, null, null, null);

    /// <summary>
    /// The first day from <paramref name="day"/> on that lies in the window; that day itself when there is no window.
    /// </summary>
    public LocalDate NextChance(LocalDate day)
    {
        if (WindowOpens is not { } opens || WindowCloses is not { } closes || IsInWindow(day, opens, closes))
            return day;
        var opening = opens.InYear(day.Year);
        return opening > day ? opening : opens.InYear(day.Year + 1);
    }

    /// <summary>The last day of the window that <paramref name="chance"/> lies in; null without a window.</summary>
    public LocalDate? LastChance(LocalDate chance)
    {
        if (WindowOpens is null || WindowCloses is not { } closes)
            return null;
        var closing = closes.InYear(chance.Year);
        return closing >= chance ? closing : closes.InYear(chance.Year + 1);
    }

    /// <summary>The days from one window's opening to the next; null without a window.</summary>
    public int? DaysToFollowingWindow(LocalDate chance) => LastChance(chance) is { } closing && WindowOpens is { } opens
        ? Period.DaysBetween(chance,
            opens.InYear(closing.Year) > closing ? opens.InYear(closing.Year) : opens.InYear(closing.Year + 1))
        : null;

    private static bool IsInWindow(LocalDate day, AnnualDate opens, AnnualDate closes)
    {
        var annual = new AnnualDate(day.Month, day.Day);
        return opens <= closes ? annual >= opens && annual <= closes : annual >= opens || annual <= closes;
    }
}
