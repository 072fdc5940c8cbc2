using Ledger.Faults.Running;
using Ledger.Faults.Verdicts;

namespace Ledger.Faults.Scenarios;

/// <summary>Entries are written into the demo year: all of them or none, and what was acknowledged is there.</summary>
/// <param name="name">What is done.</param>
/// <param name="entries">How many entries it adds.</param>
/// <param name="acknowledgement">What stands in the output once it is done; null for the number of the next
/// entry.</param>
/// <param name="command">The command and its arguments; files are named by their place in the room.</param>
public class Posting(string name, int entries, string? acknowledgement,
    Func<Room, IReadOnlyList<string>> command) : Scenario(name)
{
    private long _before;

    /// <summary>How the next entry is named once it is recorded.</summary>
    protected string Recorded => $"ntry {_before + 1}";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Command(Room room) => command(room);

    /// <inheritdoc/>
    public override void Prepare(Room room)
    {
        room.KeepTheDemoYear();
        _before = Proof.EntriesIn(room);
        File.WriteAllLines(room.Path("deliveries.csv"),
        [
            "date,item,packs,price,reference",
            .. Enumerable.Range(1,
                12).Select(i => $"2026-01-{i + 10},{(i % 2 == 0 ? "syrup" : "fen80")},{i},{40 + i}.50,again-{i}"),
        ]);
    }

    /// <inheritdoc/>
    public override bool IsAcknowledged(Ran ran) =>
        ran.Status == 0 || ran.Output.Contains(acknowledgement ?? Recorded, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override IEnumerable<Flaw> Judge(Room room, Ran ran)
    {
        var proof = Proof.Of(room);
        var added = proof.Entries - _before;
        if (!proof.IsWhole)
            yield return new(FlawKind.Lost, $"the ledger is not whole: {proof.Trouble}");
        else if (added < 0 || (added == 0 && IsAcknowledged(ran)))
            yield return new(FlawKind.Lost, $"{added} entries were added, and the program ended with {ran.Status}");
        else if (added != 0 && added != entries)
            yield return new(FlawKind.HalfDone, $"{added} entries of {entries} were added");
        else if (added > 0 && !ran.WasKilled && ran.Status != 0 && !SaysSo(ran))
            yield return new(FlawKind.Unreported,
                $"it is recorded, and the program ended with {ran.Status}: {ran.Errors}");
    }

    /// <summary>A message that could not be written cannot be asked to say anything.</summary>
    private bool SaysSo(Ran ran) =>
        ran.Errors.Contains("recorded", StringComparison.Ordinal)
            || (acknowledgement is not null && ran.Errors.Contains(acknowledgement, StringComparison.Ordinal))
            || ran.Calls.Any(call => call.EndsWith("the messages", StringComparison.Ordinal));
}
