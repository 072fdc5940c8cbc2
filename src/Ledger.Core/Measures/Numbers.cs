namespace Ledger.Core.Measures;

/// <summary>
/// Reads a number as people write it, whatever the culture of the machine: 60.5 and 60,5 are the same. Nothing parts
/// thousands: 1,500 could mean 1.5 or 1500 and is refused with both readings.
/// </summary>
public static class Numbers
{
    private const NumberStyles Signed = NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign;

    /// <summary>What is accepted, as a refusal says it.</summary>
    public const string Accepted = "a number such as 12.5";

    /// <summary>The number, or null with what is accepted instead.</summary>
    public static decimal? Read(string text, out string refusal)
    {
        var trimmed = text.Trim();
        refusal = Accepted;
        var comma = trimmed.IndexOf(',', StringComparison.Ordinal);
        if (comma >= 0)
        {
            if (trimmed.LastIndexOf(',') != comma || trimmed.Contains('.', StringComparison.Ordinal))
                return null;
            if (trimmed.Length - comma == 4 && comma is > 0 and <= 3 && trimmed is not ['0', ..])
            {
                refusal = $"{trimmed[..comma]}.{trimmed[(comma + 1)..]} or {trimmed.Remove(comma, 1)}: the comma could "
                    + "mean either";
                return null;
            }

            trimmed = $"{trimmed[..comma]}.{trimmed[(comma + 1)..]}";
        }

        return decimal.TryParse(trimmed, Signed, CultureInfo.InvariantCulture, out var number) ? number : null;
    }
}
