using System.Globalization;
using Ledger.Storage.Reading;
using Microsoft.Data.Sqlite;

namespace Ledger.Storage.Upkeep;

/// <summary>Reads every table as text, row by row, for the export.</summary>
internal sealed class Tables(Snapshot snapshot)
{
    public IReadOnlyList<string> Names
    {
        get
        {
            using var command = snapshot.Connection.CreateCommand();
            command.CommandText = "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%' AND name <> 'SchemaVersions' ORDER BY name";
            using var reader = command.ExecuteReader();
            var names = new List<string>();
            while (reader.Read())
                names.Add(reader.GetString(0));
            return names;
        }
    }

    public IReadOnlyList<string> Columns(string table)
    {
        using var reader = Select(table);
        return [.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetName)];
    }

    public IEnumerable<IReadOnlyList<string?>> Rows(string table)
    {
        using var reader = Select(table);
        while (reader.Read())
            yield return [.. Enumerable.Range(0, reader.FieldCount).Select(i =>
                reader.IsDBNull(i) ? null : Convert.ToString(reader.GetValue(i), CultureInfo.InvariantCulture))];
    }

    private SqliteDataReader Select(string table)
    {
        if (!Names.Contains(table))
            throw new ArgumentException($"there is no table {table}", nameof(table));
        var command = snapshot.Connection.CreateCommand();
        command.CommandText = $"SELECT * FROM \"{table}\"";
        return command.ExecuteReader();
    }
}
