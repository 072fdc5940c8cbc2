using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Sessions;

/// <summary>What goes into a solution beside its first part: part B, C… of a dilution such as 1+2+100.</summary>
/// <param name="Name">The item's code; of a part that no item stands for, the first one's with the part's letter:
/// "tan-a B".</param>
/// <param name="Item">The item's code; null when none stands for the part, so that it is neither taken from stock nor
/// costed.</param>
/// <param name="Exact">What the dilution asks beside what is taken of the first part.</param>
/// <param name="Measured">What the user's graduate can measure of it.</param>
public sealed record OtherPart(string Name, string? Item, Volume Exact, Volume Measured)
{
    /// <summary>The other parts beside so much of the first; none for a dilution in one part.</summary>
    /// <param name="item">The item of the first part.</param>
    /// <param name="dilution">The dilution; null where an amount is taken without one.</param>
    /// <param name="first">What is taken of the first part.</param>
    public static IReadOnlyList<OtherPart> Beside(Item item, Dilution? dilution, Volume first) =>
    [
        .. Enumerable.Range(1, dilution?.OtherPartCount ?? 0).Select(part =>
        {
            var code = part <= item.OtherParts.Count ? item.OtherParts[part - 1] : null;
            var amount = dilution!.PartWith(first, part);
            return new OtherPart(code ?? $"{item.Code} {Letter(part)}", code, amount, amount);
        }),
    ];

    /// <summary>What is to be said of the parts that no item stands for; null when every part has one.</summary>
    public static string? Unknown(Item item, Dilution? dilution) =>
        dilution is null || dilution.OtherPartCount <= item.OtherParts.Count ? null
            : $"part {string.Join(" and ", Enumerable.Range(item.OtherParts.Count + 1,
                dilution.OtherPartCount - item.OtherParts.Count).Select(Letter))} "
                + $"of {item.Code} {dilution} is neither taken from stock nor costed: name its item in the settings of "
                + $"{item.Code}";

    private static char Letter(int part) => (char)('A' + part);
}
