using NodaTime;

namespace Ledger.Storage.Files;

/// <summary>The tables that a ledger of this version has. Another program may have put others into the file; they are no part of the ledger.</summary>
internal static class OwnTables
{
    private static readonly Lazy<IReadOnlySet<string>> Made = new(Make);

    /// <summary>Their names, read from an empty ledger in memory.</summary>
    public static IReadOnlySet<string> Names => Made.Value;

    private static HashSet<string> Make()
    {
        using var memory = FileOpener.Connect(":memory:");
        Migrations.OfThisVersion.Apply(memory, "a new ledger", Instant.MinValue, keep: null);
        return [.. memory.Texts("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%' AND name <> 'SchemaVersions'")];
    }
}
