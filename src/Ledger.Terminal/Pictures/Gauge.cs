namespace Ledger.Terminal.Pictures;

/// <summary>What is left of something, as a bar with its figure beside it: "[#####.....] 53 %".</summary>
internal static class Gauge
{
    private const int Cells = 10;

    /// <summary>The gauge of so many per cent; what is shown as left is never rounded up.</summary>
    public static string Of(decimal percent, Signs? signs = null)
    {
        var (shown, with) = (Math.Clamp(percent, 0, 100), signs ?? Signs.Here);
        var bar = with.Filled(shown / 100, Cells).PadRight(Cells, with.Rest);
        return $"{with.Open}{bar}{with.Close} {decimal.Floor(shown).ToString(CultureInfo.InvariantCulture)} %";
    }

    /// <summary>The gauge of a part of a whole; empty when the whole is nothing.</summary>
    public static string OfPart(long part, long whole) => Of(whole == 0 ? 0 : 100m * part / whole);
}
