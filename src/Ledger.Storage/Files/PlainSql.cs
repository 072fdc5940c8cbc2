namespace Ledger.Storage.Files;

/// <summary>
/// SQL that is no query of a reader: transactions, pragmas, the schema. Dapper takes a single word for a stored
/// procedure.
/// </summary>
internal static class PlainSql
{
    /// <summary>Runs one or more statements.</summary>
    public static int Run(this SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteNonQuery();
    }

    /// <summary>The one number that a statement answers with.</summary>
    public static long Number(this SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return (long)command.ExecuteScalar()!;
    }

    /// <summary>The first column of every row, as text.</summary>
    public static IReadOnlyList<string> Texts(this SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        using var reader = command.ExecuteReader();
        var texts = new List<string>();
        while (reader.Read())
            texts.Add(reader.GetString(0));
        return texts;
    }
}
