namespace Ledger.Published.Tests.Support;

/// <summary>Compares an exact figure with one that was printed rounded.</summary>
internal static class Printed
{
    /// <summary>The exact figure, rounded as far as the print goes, is the printed one.</summary>
    public static void Agrees(Row row, string column, decimal exact)
    {
        var (value, decimals) = row.Printed(column);
        Assert.Equal(value, Math.Round(exact, decimals, MidpointRounding.AwayFromZero));
    }
}
