using Ledger.Faults.Running;
using Ledger.Faults.Verdicts;

namespace Ledger.Faults.Scenarios;

/// <summary>
/// The first entry makes the ledger. Whatever became of it, the next command finds a ledger or makes one.
/// </summary>
public sealed class FirstUse() : Scenario("first use")
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> Command(Room room) => Item("fen80");

    /// <inheritdoc/>
    public override void Prepare(Room room)
    {
    }

    /// <inheritdoc/>
    public override IEnumerable<Flaw> Judge(Room room, Ran ran)
    {
        var next = room.Run([.. Item("reed400")]);
        if (next.Status != 0)
        {
            yield return new(FlawKind.Lost, $"the next entry is refused: {next.Errors}");
            yield break;
        }

        var proof = Proof.Of(room);
        if (!proof.IsWhole)
            yield return new(FlawKind.Lost, $"the ledger is not whole: {proof.Trouble}");
        else if (room.Run("show", "item", "fen80").Status != 0 && IsAcknowledged(ran))
            yield return new(FlawKind.Lost, "the first item is not there, though the program ended with 0");
    }

    /// <inheritdoc/>
    public override bool MayStand(string file) => file == "ledger.db";

    private static IReadOnlyList<string> Item(string code) =>
        ["record", "item", code, "--kind", "film", "--format", "8x10", "--pack", "25"];
}
