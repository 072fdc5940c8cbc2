using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text.Json;
using Ledger.Faults.Running;
using Microsoft.Data.Sqlite;

namespace Ledger.Faults.Verdicts;

/// <summary>What can be proved of a ledger: by the program's own check, and by SQLite beside it.</summary>
/// <param name="Trouble">What is wrong, or null.</param>
/// <param name="Entries">How many entries it holds.</param>
internal sealed record Proof(string? Trouble, long Entries)
{
    private static readonly ConcurrentDictionary<string, Proof> _proved = new();

    /// <summary>Whether nothing is wrong.</summary>
    public bool IsWhole => Trouble is null;

    /// <summary>The entries of a ledger that must be whole, since nothing happened to it yet.</summary>
    /// <exception cref="InvalidOperationException">It is not.</exception>
    public static long EntriesIn(Room room) =>
        Of(room) is { IsWhole: true } proof ? proof.Entries : throw new InvalidOperationException(Of(room).Trouble);

    /// <summary>
    /// Proves the ledger of a room, or another file there. What was proved of the same bytes holds again.
    /// </summary>
    public static Proof Of(Room room, string? file = null)
    {
        var path = file ?? room.Ledger;
        if (!File.Exists(path))
            return new($"there is no {Path.GetFileName(path)}", 0);
        var bytes = Bytes(path);
        return _proved.TryGetValue(bytes, out var known) ? known : _proved[bytes] = Prove(path);
    }

    /// <summary>The number of the first entry of a kind.</summary>
    public static long FirstOf(Room room, string kind) =>
        Number(room, "SELECT min(id) FROM entry WHERE counts = 1 AND kind = $kind", kind);

    /// <summary>The number of the last entry of a kind.</summary>
    public static long LastOf(Room room, string kind) =>
        Number(room, "SELECT max(id) FROM entry WHERE counts = 1 AND kind = $kind", kind);

    private static long Number(Room room, string sql, string kind)
    {
        using var connection = new SqliteConnection($"Data Source={room.Ledger};Mode=ReadOnly;Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // the two sentences above
        command.CommandText = sql;
#pragma warning restore CA2100
        command.Parameters.AddWithValue("$kind", kind);
        return (long)command.ExecuteScalar()!;
    }

    /// <summary>The digest of the file and of what stands in the logs beside it.</summary>
    private static string Bytes(string path) => string.Join(' ', new[] { "", "-wal", "-journal" }.Select(ending =>
        File.Exists(path + ending) ? Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(path + ending))) : "none"));

    private static Proof Prove(string path)
    {
        var check = Room.RunOn(path, "check", "--json");
        if (check.Status != 0)
            return new($"check ends with {check.Status}: {First(check.Errors + check.Output)}", 0);
        using var report = JsonDocument.Parse(check.Output);
        return WithSqlite(path, report.RootElement.GetProperty("entries").GetInt64());
    }

    private static Proof WithSqlite(string path, long told)
    {
        try
        {
            using var connection = new SqliteConnection($"Data Source={path};Mode=ReadWrite;Pooling=False");
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = "PRAGMA integrity_check";
            var found = (string)command.ExecuteScalar()!;
            command.CommandText = "SELECT count(*) FROM entry";
            var entries = (long)command.ExecuteScalar()!;
            return new(found != "ok" ? found : entries != told ? $"check counts {told} entries of {entries}" : null,
                entries);
        }
        catch (SqliteException trouble)
        {
            return new(trouble.Message, 0);
        }
    }

    private static string First(string text) =>
        text.Length <= 200 ? text.ReplaceLineEndings(" ") : text[..200].ReplaceLineEndings(" ");
}
