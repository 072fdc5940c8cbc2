namespace Ledger.Core.Stock;

/// <summary>
/// Something may be wrong with a delivery, a box, a bottle or a bath. Until that is cleared it is not used: it stays
/// where it is, keeps its value, and is
/// neither drawn from nor counted as usable.
/// </summary>
/// <param name="Since">The day from which it holds.</param>
/// <param name="Reason">Why, in the user's words.</param>
public sealed record Suspicion(LocalDate Since, string Reason)
{
    /// <summary>"under suspicion since 2026-08-24: fogged edges".</summary>
    public string Text => $"under suspicion since {Measures.Dates.Text(Since)}: {Reason}";
}
