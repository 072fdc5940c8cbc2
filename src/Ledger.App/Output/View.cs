namespace Ledger.App.Output;

/// <summary>What a reading looks at.</summary>
/// <param name="Ledger">The ledger.</param>
/// <param name="Holdings">What it holds on the day.</param>
/// <param name="AsOf">The day.</param>
/// <param name="Width">The columns that text may take.</param>
internal sealed record View(ILedger Ledger, Holdings Holdings, LocalDate AsOf, int Width)
{
    /// <summary>Of a document that says nothing of a ledger's measures.</summary>
    public static View OfNone { get; } = new(null!, null!, default, 0);

    public string Currency => Holdings.Settings.Currency;

    public MeasureStyle Style => Holdings.Settings.Style;
}
