namespace Ledger.Core.Film;

/// <summary>A sheet's number in the ledger, written #12. It has one from the day it leaves its box.</summary>
/// <param name="Value">Positive.</param>
public readonly record struct SheetId(long Value)
{
    /// <summary>The number that "#12" names, or null.</summary>
    public static SheetId? Parse(string text) =>
        text.StartsWith('#') && long.TryParse(
            text.AsSpan(1), System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture,
            out var number)
            ? new(number) : null;

    /// <summary>"#12".</summary>
    public override string ToString() => $"#{Value}";
}
