using Ledger.Storage.Files;
using Ledger.Storage.Reading;

namespace Ledger.Storage.Upkeep;

/// <summary>Reads every table as text, row by row, for the export.</summary>
internal sealed class Tables(Snapshot snapshot)
{
    /// <summary>
    /// The ledger's own tables, in the order of their names. Another program may have put others into the file; they
    /// are no part of it, and neither is what was typed and not saved.
    /// </summary>
    public IReadOnlyList<string> Names =>
    [
        .. Schema.Of(snapshot.Connection).Values
            .Where(part => part.Type == "table" && part.Name != Drafts.Table && Schema.Expected.ContainsKey(part.Name))
            .Select(part => part.Name),
    ];

    /// <summary>The views that are there to be read by people: names instead of numbers, usual units.</summary>
    public static IReadOnlyList<string> Readable { get; } =
        [.. Schema.Expected.Values.Where(part => part.Type == "view" && part.Name != "standing_entry")
            .Select(part => part.Name)];

    public IReadOnlyList<string> Columns(string table)
    {
        using var command = Select(table);
        using var reader = command.ExecuteReader();
        return [.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetName)];
    }

    public IEnumerable<IReadOnlyList<string?>> Rows(string table)
    {
        using var command = Select(table);
        using var reader = command.ExecuteReader();
        while (reader.Read())
            yield return [.. Enumerable.Range(0, reader.FieldCount).Select(i => Text(reader.GetValue(i)))];
    }

    /// <summary>
    /// Tables hold whole numbers; the views' fractions have the six digits of money at most, and no exponent.
    /// </summary>
    private static string? Text(object value) => value switch
    {
        DBNull => null,
        double fraction => fraction.ToString("0.######", CultureInfo.InvariantCulture),
        _ => Convert.ToString(value, CultureInfo.InvariantCulture),
    };

    private SqliteCommand Select(string table)
    {
        if (!Names.Contains(table) && !Readable.Contains(table))
            throw new ArgumentException($"there is no table {table}", nameof(table));
        var command = snapshot.Connection.CreateCommand();
        command.CommandText = $"SELECT * FROM \"{table}\"";
        return command;
    }
}
