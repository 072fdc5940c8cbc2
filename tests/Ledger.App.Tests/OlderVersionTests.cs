using System.IO.Compression;
using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.Json.Nodes;
using Ledger.App.Tests.Support;

namespace Ledger.App.Tests;

/// <summary>A ledger that a released version wrote opens, is brought up to date, and reads the same as it did then.</summary>
public class OlderVersionTests
{
    /// <summary>Fields and values that have another name since; the rest must be equal to the letter.</summary>
    private static readonly Dictionary<string, string> _newNames = [];

    private static readonly string _fixtures = Find();

    public static TheoryData<string> Shown => [.. Directory.EnumerateFiles(Path.Combine(_fixtures, "0.2.0-demo")).Select(file => Path.GetFileName(file))];

    [Theory]
    [MemberData(nameof(Shown))]
    public void It_reads_as_it_did(string file)
    {
        using var room = new Darkroom(new(2026, 3, 15));
        Unpack(room.Ledger);
        Assert.Equal(Expected(file), JsonNode.Parse(room.Do([.. Command(Path.GetFileNameWithoutExtension(file))]))!.ToJsonString());
    }

    [Fact]
    public void Nothing_is_wrong_with_it()
    {
        using var room = new Darkroom(new(2026, 3, 15));
        Unpack(room.Ledger);
        var check = room.Run("check", "--json").Json;
        Assert.Equal((true, 182), (check.GetProperty("ok").GetBoolean(), check.GetProperty("entries").GetInt32()));
    }

    [Fact]
    public void It_is_restored_as_a_backup_and_reads_the_same()
    {
        using var room = new Darkroom(new(2026, 3, 15));
        room.Do("record", "setting", "currency", "CHF");
        Unpack(room.PathOf("old.db"));
        var before = File.ReadAllBytes(room.PathOf("old.db"));
        room.Do("backup", "--restore", room.PathOf("old.db"));
        Assert.Equal(before, File.ReadAllBytes(room.PathOf("old.db")));
        Assert.Equal(Expected("shelf.json"), JsonNode.Parse(room.Do([.. Command("shelf")]))!.ToJsonString());
        Assert.Equal(182, room.Run("check", "--json").Json.GetProperty("entries").GetInt32());
    }

    private static IEnumerable<string> Command(string name) =>
    [
        "show", .. name.Split('-', 2), "--json", "--as-of", "2026-03-15",
        .. name is "journal" or "sessions" or "prints" ? ["--last", "200"] : Array.Empty<string>(),
    ];

    private static string Expected(string file) => Renamed(JsonNode.Parse(File.ReadAllText(Path.Combine(_fixtures, "0.2.0-demo", file))))!.ToJsonString();

    private static JsonNode? Renamed(JsonNode? node) => node switch
    {
        JsonObject fields => new JsonObject(fields.Select(field => KeyValuePair.Create(NewName(field.Key), Renamed(field.Value)))),
        JsonArray list => new JsonArray([.. list.Select(Renamed)]),
        JsonValue value when value.GetValueKind() == JsonValueKind.String => JsonValue.Create(NewName(value.GetValue<string>())),
        _ => node?.DeepClone(),
    };

    private static string NewName(string name) => _newNames.GetValueOrDefault(name, name);

    private static void Unpack(string path)
    {
        using var packed = new GZipStream(File.OpenRead(Path.Combine(_fixtures, "0.2.0-demo.db.gz")), CompressionMode.Decompress);
        using var file = File.Create(path);
        packed.CopyTo(file);
    }

    private static string Find([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "Ledger.Storage.Tests", "Fixtures"));
}
