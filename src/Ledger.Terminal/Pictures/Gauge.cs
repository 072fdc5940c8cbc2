using System.Globalization;

namespace Ledger.Terminal.Pictures;

/// <summary>What is left of something, as a bar in plain characters with its figure beside it: "[######....] 53 %".</summary>
internal static class Gauge
{
    private const int Cells = 10;

    /// <summary>The gauge of so many per cent; what is shown as left is never rounded up.</summary>
    public static string Of(decimal percent)
    {
        var shown = Math.Clamp(percent, 0, 100);
        var filled = (int)decimal.Floor(shown * Cells / 100);
        var bar = new string('#', filled).PadRight(Cells, '.');
        return $"[{bar}] {decimal.Floor(shown).ToString(CultureInfo.InvariantCulture)} %";
    }

    /// <summary>The gauge of a part of a whole; empty when the whole is nothing.</summary>
    public static string OfPart(long part, long whole) => Of(whole == 0 ? 0 : 100m * part / whole);
}
