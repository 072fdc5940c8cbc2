using Ledger.Faults.Running;
using Ledger.Faults.Verdicts;

namespace Ledger.Faults.Scenarios;

/// <summary>A backup is whole or not there.</summary>
public sealed class BackingUp() : Scenario("backup")
{
    private long _entries;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Command(Room room) => ["backup", room.Path("copy.db")];

    /// <inheritdoc/>
    public override void Prepare(Room room)
    {
        room.KeepTheDemoYear();
        _entries = Proof.EntriesIn(room);
    }

    /// <inheritdoc/>
    public override IEnumerable<Flaw> Judge(Room room, Ran ran)
    {
        if (Proof.Of(room) is var ledger && (!ledger.IsWhole || ledger.Entries != _entries))
            yield return new(FlawKind.Lost,
                $"the ledger is not whole: {ledger.Trouble}, {ledger.Entries} entries of {_entries}");
        if (!File.Exists(room.Path("copy.db")))
        {
            if (IsAcknowledged(ran))
                yield return new(FlawKind.Lost, "there is no backup, though the program ended with 0");
        }
        else if (Proof.Of(room, room.Path("copy.db")) is var copy && (!copy.IsWhole || copy.Entries != _entries))
        {
            yield return new(FlawKind.HalfDone,
                $"the backup is not whole: {copy.Trouble}, {copy.Entries} entries of {_entries}");
        }
    }

    /// <inheritdoc/>
    public override bool MayStand(string file) => file == "copy.db";
}
