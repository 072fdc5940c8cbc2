using Ledger.Faults.Running;
using Ledger.Faults.Verdicts;

namespace Ledger.Faults.Scenarios;

/// <summary>
/// An export takes the place of an earlier one: all files are old, all are new, or a mark says that it was broken off;
/// the next export then makes all of them new.
/// </summary>
public sealed class ExportingAgain() : Scenario("export in place of an earlier one")
{
    private const string Folder = "tables", Mark = $"{Folder}/trayledger-export-unfinished.txt";

    private Dictionary<string, string> _old = [], _new = [];

    /// <inheritdoc/>
    public override IReadOnlyList<string> Command(Room room) => ["export", room.Path(Folder), "--replace"];

    /// <inheritdoc/>
    public override void Prepare(Room room)
    {
        room.KeepTheDemoYear();
        room.Do("export", room.Path(Folder));
        room.Do("record", "count", "fen80", "48", "--reason", "counted again");
        _old = Tables(room);
    }

    /// <inheritdoc/>
    public override void Learn(Room done) => _new = Tables(done);

    /// <inheritdoc/>
    public override IEnumerable<Flaw> Judge(Room room, Ran ran)
    {
        var there = Tables(room);
        if (there.Any(table => table.Value != _old[table.Key] && table.Value != _new[table.Key]))
            yield return new(FlawKind.HalfDone, "a table is neither whole nor what it was");
        if (IsAcknowledged(ran) && !IsSame(there, _new))
            yield return new(FlawKind.Lost, "not all tables are new, though the program ended with 0");
        else if (!IsSame(there, _old) && !IsSame(there, _new) && !File.Exists(room.Path(Mark)))
            yield return new(FlawKind.Unreported, "some tables are new and others are not, and nothing says so");
        if (!File.Exists(room.Path(Mark)))
            yield break;
        room.Run("export", room.Path(Folder));
        if (!IsSame(Tables(room), _new) || File.Exists(room.Path(Mark)))
            yield return new(FlawKind.HalfDone, "the next export does not finish what was broken off");
    }

    private static Dictionary<string, string> Tables(Room room) => room.Files
        .Where(file => file.EndsWith(".csv", StringComparison.Ordinal)).ToDictionary(file => file,
            file => File.ReadAllText(room.Path(file)));

    private static bool IsSame(Dictionary<string, string> one, Dictionary<string, string> other) =>
        one.Count == other.Count && one.All(table => other.GetValueOrDefault(table.Key) == table.Value);
}
