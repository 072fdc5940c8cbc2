using Ledger.Faults.Running;
using Ledger.Faults.Verdicts;

namespace Ledger.Faults.Scenarios;

/// <summary>
/// A ledger of an older version is opened: it is brought up to date or stays what it was, and a copy of it is kept at
/// most once.
/// </summary>
/// <param name="name">Of which ledger.</param>
/// <param name="make">Makes the older ledger under a path.</param>
public sealed class Migration(string name, Action<string> make) : Scenario(name)
{
    private string _shelf = "";
    private long _entries;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Command(Room room) => ["show", "shelf", "--json"];

    /// <inheritdoc/>
    public override void Prepare(Room room) => make(room.Ledger);

    /// <inheritdoc/>
    public override void Learn(Room done)
    {
        _entries = Proof.EntriesIn(done);
        _shelf = done.Do("show", "shelf", "--json").Output;
    }

    /// <inheritdoc/>
    public override IEnumerable<Flaw> Judge(Room room, Ran ran)
    {
        var next = room.Run([.. Command(room)]);
        var proof = Proof.Of(room);
        if (!proof.IsWhole || next.Status != 0)
            yield return new(FlawKind.Lost, $"the ledger is not whole: {proof.Trouble}{next.Errors}");
        else if (proof.Entries != _entries || next.Output != _shelf)
            yield return new(FlawKind.Lost,
                $"{proof.Entries} entries of {_entries} are there, or the shelf is another one");
        if (Copies(room) is { Count: > 1 } copies)
            yield return new(FlawKind.HalfDone, $"it is kept more than once: {string.Join(", ", copies)}");
        foreach (var copy in Copies(room))
        {
            if (Proof.Of(room, room.Path(copy)) is { IsWhole: false } broken)
                yield return new(FlawKind.HalfDone, $"the copy {copy} is not whole: {broken.Trouble}");
        }
    }

    /// <inheritdoc/>
    public override bool MayStand(string file) => file.EndsWith(".backup", StringComparison.Ordinal);

    private static List<string> Copies(Room room) =>
        [.. room.Files.Where(file => file.EndsWith(".backup", StringComparison.Ordinal))];
}
