using System.IO.Compression;
using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Ledger.App.Tests;

/// <summary>
/// A ledger that a released version wrote opens, is brought up to date, and reads the same as it did then.
/// </summary>
public class OlderVersionTests
{
    /// <summary>Fields that have another name since; the rest must be equal to the letter.</summary>
    private static readonly Dictionary<string, string> _fields = new()
    {
        ["fixerWeight"] = "fixerFactor", ["because"] = "reason", ["available"] = "usable",
        ["incoming"] = "onOrder", ["reserved"] = "planned", ["standsSecond"] = "isSecond",
        ["pouredOutOn"] = "discardedOn", ["pouredOutBecause"] = "discardReason", ["speed"] = "exposureIndex",
        ["printedDate"] = "expiresOn", ["isPast"] = "isExpired", ["line"] = "subject",
        ["roomSqIn"] = "capacityLeftSqIn", ["reverses"] = "undoes", ["reversedBy"] = "undoneBy", ["isSpent"] = "state",
    };

    /// <summary>Values of a field that have another name since.</summary>
    private static readonly Dictionary<(string Field, string Value), string> _values = new()
    {
        [("kind", "receipt")] = "delivery", [("kind", "purchase")] = "delivery", [("kind", "correction")] = "undo",
        [("kind", "speed")] = "exposure-index", [("severity", "act")] = "now",
        [("cause", "double")] = "double exposure", [("cause", "blank")] = "unexposed",
        [("cause", "wrong way round")] = "loaded backwards", [("place", "drain")] = "used up",
        [("place", "thrown away")] = "discarded", [("kind", "drain")] = "used up",
        [("kind", "thrown away")] = "discarded", [("kind", "fixer")] = "hypo",
        [("setting", "residual-fixer-limit")] = "residual-hypo-limit",
        [("setting", "spent-multiple")] = "exhausted-multiple", [("setting", "pass-seconds")] = "full-shuffle-seconds",
    };

    /// <summary>Beginnings of references, which follow the names of the files that they come from.</summary>
    private static readonly (string Old, string New)[] _files =
        [("purchases:", "deliveries:"), ("corrections:", "undone:"), ("speeds:", "exposure_indexes:")];

    /// <summary>
    /// Readings that are computed by other rules since: shares of a fixer by the film's factor, exact lead-time demand,
    /// room by film, the time in the cold, what each sheet is called, where used chemicals are, which numbers of a box
    /// are told, settings that came since, the concentrate of baths that a plan has to mix first. What they give for
    /// the same ledger now stands in a folder of its own; everything else reads as it did then.
    /// </summary>
    private static readonly HashSet<string> _computedByOtherRules =
        ["settings.json", "costs.json", "holders.json", "item-tarnfix.json", "today.json",
            "bath-D1.json", "bath-F4.json", "baths.json", "reorder.json", "shelf.json", "plans.json"];

    /// <summary>Fields that came since: of a ledger from before them they say nothing, or the usual.</summary>
    private static readonly HashSet<string> _added = [
        "otherParts", "isPriced", "unpriced", "unpricedSheets", "isComplete", "freezerDays", "fridgeDays", "thawHours",
        "wasteKind", "suspect", "suspicion", "suspectSince", "fates", "filedIn", "findings",
    ];

    private static readonly string _fixtures = Find();

    public static TheoryData<string> Shown =>
        [.. Directory.EnumerateFiles(Path.Combine(_fixtures, "0.2.0-demo")).Select(file => Path.GetFileName(file))];

    [Theory]
    [MemberData(nameof(Shown))]
    public void It_reads_as_it_did(string file)
    {
        using var room = new Darkroom(new(2026, 3, 15));
        Unpack(room.Ledger);
        var shown = room.Do([.. Command(Path.GetFileNameWithoutExtension(file))]);
        Assert.Equal(Expected(file), Known(JsonNode.Parse(shown)).ToJsonString());
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
    public void What_is_recorded_afterwards_can_be_late_taken_back_and_put_right()
    {
        using var room = new Darkroom(new(2026, 3, 15));
        Unpack(room.Ledger);
        room.Do("record", "count", "gloves", "20", "--reason", "counted", "--reference", "counted");
        IsInOrder();
        room.Do("record", "undo", "180", "--reason", "wrong");
        IsInOrder();
        room.Do("record", "item", "syrup", "--date", "2026-03-01", "--lead-time-days", "20");
        IsInOrder();
        room.Do("record", "count", "gloves", "21", "--date", "2026-03-14", "--reason", "late");
        room.Do("record", "amendment", "counted", "found=19", "--reason", "mistyped");
        IsInOrder();
        Assert.Contains("did not keep its words",
            room.Run("record", "amendment", "50", "note=x", "--reason", "y").Error, StringComparison.Ordinal);

        void IsInOrder() =>
            Assert.Equal("",
                string.Join("; ", room.Run("check", "--json").Json.GetProperty("problems").EnumerateArray()));
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
        Assert.Equal(Expected("shelf.json"), Known(JsonNode.Parse(room.Do([.. Command("shelf")]))).ToJsonString());
        Assert.Equal(182, room.Run("check", "--json").Json.GetProperty("entries").GetInt32());
    }

    /// <summary>The rows keep their identities under the new names of files, columns and words.</summary>
    [Fact]
    public void Importing_the_year_that_it_was_made_from_adds_nothing()
    {
        using var room = new Darkroom(new(2026, 3, 15));
        Unpack(room.Ledger);
        var year = Directory.CreateDirectory(room.PathOf("year")).FullName;
        foreach (var file in Directory.EnumerateFiles(Path.Combine(_fixtures, "..", "..", "..", "sample-data"),
            "*.csv"))
        {
            // A note is the user's own text: another one would be another version of the process.
            // What the year tells now and did not then: that boxes were taken out of the freezer before they were
            // opened.
            var text = string.Concat(
                File.ReadLines(file).Where(line => !line.Contains("demo-thaw-", StringComparison.Ordinal))
                    .Select(line => line + "\n")).Replace("the developer and the final rinse",
                        "the developer and the last rinse", StringComparison.Ordinal);
            File.WriteAllText(Path.Combine(year, Path.GetFileName(file)), text);
        }

        room.Do("import", "all", year);
        Assert.Equal(182, room.Run("check", "--json").Json.GetProperty("entries").GetInt32());
    }

    private static IEnumerable<string> Command(string name) =>
    [
        "show", .. name.Split('-', 2), "--json", "--as-of", "2026-03-15",
        .. name is "journal" or "sessions" or "prints" ? ["--last", "200"] : Array.Empty<string>(),
    ];

    private static string Expected(string file) => _computedByOtherRules.Contains(file)
        ? JsonNode.Parse(File.ReadAllText(Path.Combine(_fixtures, "0.2.0-demo-now", file)))!.ToJsonString()
        :
        Renamed(JsonNode.Parse(File.ReadAllText(Path.Combine(_fixtures, "0.2.0-demo", file))), "")!.ToJsonString();

    private static JsonNode Known(JsonNode? node)
    {
        foreach (var fields in Objects(node))
        {
            if (fields["negatives"] is JsonArray) // the names of those that were printed; elsewhere it is a count
                fields.Remove("negatives");
            foreach (var name in _added)
                fields.Remove(name);
        }

        return node!;
    }

    private static List<JsonObject> Objects(JsonNode? node) => node switch
    {
        JsonObject fields => [fields, .. fields.SelectMany(field => Objects(field.Value))],
        JsonArray list => [.. list.SelectMany(Objects)],
        _ => [],
    };

    private static JsonNode? Renamed(JsonNode? node, string name) => node switch
    {
        JsonObject fields => new JsonObject(fields.Select(field => Renamed(fields, field.Key, field.Value))),
        JsonArray list => new JsonArray([.. InOrder(list.Select(one => Renamed(one, name)), name)]),
        JsonValue value when value.GetValueKind() == JsonValueKind.String =>
            JsonValue.Create(NewValue(name, value.GetValue<string>())),
        _ => node?.DeepClone(),
    };

    /// <summary>
    /// The single places, which have the name of their kind, come last and in the order of their names.
    /// </summary>
    private static IEnumerable<JsonNode?> InOrder(IEnumerable<JsonNode?> list, string name) => name != "places" ? list
        : list.OrderBy(place => $"{place!["place"]}" == $"{place["kind"]}" ? $"{place["kind"]}" : "",
            StringComparer.Ordinal);

    private static KeyValuePair<string, JsonNode?> Renamed(JsonObject fields, string name,
        JsonNode? value) => name switch
    {
        "isSpent" => KeyValuePair.Create<string, JsonNode?>("state", State(fields)),
        "kind" when value?.ToString() == "bath-spent" => KeyValuePair.Create<string, JsonNode?>(
            name, fields["text"]!.ToString().EndsWith("by age", StringComparison.Ordinal)
                ? "bath-expired"
                : "bath-exhausted"),
        "subject" when fields.ContainsKey("severity") => KeyValuePair.Create("about", Renamed(value, name)),
        _ => KeyValuePair.Create(_fields.GetValueOrDefault(name, name), Renamed(value, name)),
    };

    /// <summary>What was told in two fields and by what ended it.</summary>
    private static string State(JsonObject bath) => bath["inUse"]?.GetValue<bool>() == false ? "discarded"
        : !bath["isSpent"]!.GetValue<bool>() ? "in use"
        : bath["endsBy"]!.ToString() == "age" ? "expired" : "exhausted";

    private static string NewValue(string name, string value)
    {
        if (name == "reference")
            foreach (var (old, now) in _files)
                if (value.StartsWith(old, StringComparison.Ordinal))
                    return now + value[old.Length..];
        return name == "purpose" ? value : _values.GetValueOrDefault((name, value), value).Replace("printed date",
            "expiry date", StringComparison.Ordinal);
    }

    private static void Unpack(string path)
    {
        using var packed = new GZipStream(File.OpenRead(Path.Combine(_fixtures, "0.2.0-demo.db.gz")),
            CompressionMode.Decompress);
        using var file = File.Create(path);
        packed.CopyTo(file);
    }

    private static string Find([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "Ledger.Storage.Tests", "Fixtures"));
}
