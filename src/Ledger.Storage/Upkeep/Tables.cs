using System.Globalization;
using Ledger.Storage.Files;
using Ledger.Storage.Reading;
using Microsoft.Data.Sqlite;

namespace Ledger.Storage.Upkeep;

/// <summary>Reads every table as text, row by row, for the export.</summary>
internal sealed class Tables(Snapshot snapshot)
{
    /// <summary>
    /// The ledger's own tables, in the order of their names. Another program may have put others into the file; they are no part of it, and
    /// neither is what was typed and not saved.
    /// </summary>
    public IReadOnlyList<string> Names =>
    [
        .. Schema.Of(snapshot.Connection).Values
            .Where(part => part.Type == "table" && part.Name != Drafts.Table && Schema.Expected.ContainsKey(part.Name)).Select(part => part.Name),
    ];

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
