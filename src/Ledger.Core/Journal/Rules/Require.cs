using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>The checks that several rules share; each refuses with a sentence.</summary>
internal static class Require
{
    private const int LongestName = 60;

    public static void That(bool accepted, string otherwise)
    {
        if (!accepted)
            throw new RefusedException(RefusalKind.NotAccepted, otherwise);
    }

    /// <summary>A name that can be typed on a command line and written on a label.</summary>
    public static string Name(string name, string what)
    {
        var trimmed = name.Trim();
        That(trimmed.Length > 0, $"{what} needs a name");
        That(trimmed.Length <= LongestName,
            $"the name of {what} has {trimmed.Length} characters; at most {LongestName} are accepted");
        That(!trimmed.Any(char.IsControl), $"the name of {what} holds a character that cannot be printed");
        return trimmed;
    }

    public static string Reason(string reason)
    {
        That(!string.IsNullOrWhiteSpace(reason), "a reason is needed, such as exhausted, spilt or miscounted");
        return reason.Trim();
    }

    public static void Unit(Item item, Quantity quantity) =>
        That(quantity.Unit == item.Unit,
            $"{item.Code} is kept in {item.Unit.Plural()}, not in {quantity.Unit.Plural()}");

    public static void Positive(Quantity quantity, string what) =>
        That(quantity.Base > 0, $"{what} must be more than nothing, not {quantity}");

    public static void NotNegative(Money money, string what) =>
        That(money.Millionths >= 0, $"{what} cannot be negative: {Scaled.ToText(money.Amount, 6)}");
}
