using Ledger.Storage.Deriving;
using Ledger.Storage.Reading;

namespace Ledger.Storage.Upkeep;

/// <summary>
/// Derives again what follows from what was recorded, inside a transaction of the caller. What was recorded is never
/// touched.
/// </summary>
internal static class Mender
{
    private const int Constraint = 19;

    /// <summary>
    /// Derives it; false when what was recorded gives what cannot be, and all is to be left as it was.
    /// </summary>
    /// <param name="connection">The file, in a transaction of the caller.</param>
    /// <param name="today">The day of mending.</param>
    public static bool TryMend(SqliteConnection connection, LocalDate today)
    {
        try
        {
            SchemaCheck.Mend(connection);
            ReadMeCheck.Mend(connection);
            Totals.AddUp(connection);

            if (DerivationCheck.Digests(connection).Any())
                return true;
            using var inside = new Snapshot(connection);
            new Derivation(connection, inside, today).All();
            Words.Write(connection, inside);
            return true;
        }
        catch (Exception trouble) when (trouble is SqliteException { SqliteErrorCode: Constraint }
            or NoLongerHoldsException or FormatException)
        {
            return false;
        }
    }
}
