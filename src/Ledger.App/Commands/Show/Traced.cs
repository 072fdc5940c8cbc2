namespace Ledger.App.Commands.Show;

/// <summary>What a user names to be traced.</summary>
internal static class Traced
{
    /// <summary>What is accepted, for help.</summary>
    public const string Accepted =
        "a negative such as 2025-014, a sheet such as #12, a bath, a box or bottle, an emulsion or batch number, a "
        + "holder or one of its sides, a session, "
        + "a print session, a plan, or a box of exposed sheets";

    public static TraceReading Read(string name, ILedger ledger, LocalDate asOf) =>
        new(name.Trim(), Find(name, ledger, asOf), ledger, bath => ledger.Bath(bath, asOf), asOf);

    public static RiskReading Risk(string name, ILedger ledger, Holdings holdings, LocalDate? by) =>
        new(name.Trim(), Find(name, ledger, holdings.AsOf), ledger, holdings, by);

    private static IReadOnlyList<TraceNode> Find(string name, ILedger ledger, LocalDate asOf) =>
        ledger.Named(name.Trim(), asOf) is { Count: > 0 } found ? found
            : throw new RefusedByCommandException(
                $"there is nothing called \"{name.Trim()}\" to trace; name {Accepted}");
}
