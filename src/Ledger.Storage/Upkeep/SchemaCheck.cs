using Ledger.Storage.Files;

namespace Ledger.Storage.Upkeep;

/// <summary>
/// Compares the tables, indexes, triggers and views of a file with those of an empty ledger of this version.
/// </summary>
internal static class SchemaCheck
{
    /// <summary>What is missing, foreign, or not as it should be.</summary>
    public static IEnumerable<Problem> Problems(SqliteConnection connection)
    {
        var (there, expected) = (Schema.Of(connection), Schema.Expected);
        foreach (var part in expected.Values)
            if (!there.TryGetValue(part.Name, out var found))
                yield return new($"{Name(part)} is missing", part.IsMadeAgain);
            else if (!part.Means(found))
                yield return new(
                    $"{Name(part)} was changed: it is not as this version makes it",
                    part.IsMadeAgain && found.IsMadeAgain);
        foreach (var part in there.Values.Where(part => !expected.ContainsKey(part.Name)))
            yield return new(
                $"{Name(part)} is not of a ledger: another program put it there"
                    + (part.IsMadeAgain ? "" : "; move what it holds to a file of its own"),
                part.IsMadeAgain);
    }

    /// <summary>Makes again what holds no data of its own, and takes away what of that is foreign.</summary>
    public static void Mend(SqliteConnection connection)
    {
        var (there, expected) = (Schema.Of(connection), Schema.Expected);
        foreach (var part in there.Values.Where(part => part.IsMadeAgain))
            if (!expected.TryGetValue(part.Name, out var right) || (right.IsMadeAgain && !right.Means(part)))
                connection.Run($"DROP {part.Type.ToUpperInvariant()} IF EXISTS {Quoted(part.Name)}");
        there = Schema.Of(connection);

        // Views first: triggers and indexes may need them, and they need nothing but tables.
        var missing = expected.Values.Where(part => part.IsMadeAgain && !there.ContainsKey(part.Name));
        foreach (var part in missing.OrderBy(part => part.Type != "view"))
            connection.Run(part.Sql);
    }

    private static string Name(SchemaPart part) => part.Name.StartsWith(Guards.Prefix, StringComparison.Ordinal)
        ? $"the guard {part.Name}, which keeps other programs from changing what the table {part.Table} holds,"
        : part.Type is "table" or "view"
            ? $"the {part.Type} {part.Name}"
            : $"the {part.Type} {part.Name} of the table {part.Table}";

    private static string Quoted(string name) => $"\"{name.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
