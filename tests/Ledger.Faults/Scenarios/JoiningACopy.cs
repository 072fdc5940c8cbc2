using Ledger.Faults.Running;

namespace Ledger.Faults.Scenarios;

/// <summary>What a copy of the ledger knows is added: all of it, and what follows from it, or nothing.</summary>
public sealed class JoiningACopy() : Posting("join a copy", 2, "2 entries added",
    room => ["join", room.Path("other.db")])
{
    /// <inheritdoc/>
    public override void Prepare(Room room)
    {
        base.Prepare(room);
        File.Copy(room.Ledger, room.Path("other.db"), overwrite: true);
        foreach (var found in new[] { "47", "46" })
            Room.RunOn(room.Path("other.db"), "record", "count", "fen80", found, "--reason", "counted elsewhere");
    }

    /// <inheritdoc/>
    public override bool MayStand(string file) => file.StartsWith("other.db", StringComparison.Ordinal);
}
