using Ledger.Storage.Files;

namespace Ledger.Storage.Upkeep;

/// <summary>
/// Compares what a file says of its tables and columns with what this version writes into an empty ledger. It follows
/// from no entry, and nobody but the scripts in migrations/ writes it.
/// </summary>
internal static class ReadMeCheck
{
    /// <summary>The table.</summary>
    public const string Table = "read_me";

    /// <summary>What it says otherwise. Nothing where the table is missing: that is said of the tables.</summary>
    public static IEnumerable<Problem> Problems(SqliteConnection connection)
    {
        if (!Schema.Of(connection).ContainsKey(Table))
            return [];
        var (there, expected) = (connection.Texts(Schema.ReadMeRows), Schema.ExpectedReadMe);
        return
        [
            .. expected.Except(there).Select(row => new Problem($"read_me should say {row}", IsMendable: true)),
            .. there.Except(expected).Select(row => new Problem(
                $"read_me says {row}, which this version does not say", IsMendable: true)),
        ];
    }

    /// <summary>Writes it again, inside a transaction of the caller.</summary>
    public static void Mend(SqliteConnection connection)
    {
        if (!Schema.Of(connection).ContainsKey(Table))
            return;
        connection.Run("DELETE FROM read_me");
        using var insert = connection.CreateCommand();
        insert.CommandText =
            """
            INSERT INTO read_me ("table", "column", unit, meaning)
            VALUES ($row ->> 0, $row ->> 1, $row ->> 2, $row ->> 3)
            """;
        var parameter = insert.Parameters.Add("$row", SqliteType.Text);
        foreach (var row in Schema.ExpectedReadMe)
        {
            parameter.Value = row;
            insert.ExecuteNonQuery();
        }
    }
}
