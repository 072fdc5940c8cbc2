using Ledger.Faults.Injection;
using Ledger.Faults.Running;
using Ledger.Faults.Verdicts;

namespace Ledger.Faults.Scenarios;

/// <summary>
/// One thing that a user does with a ledger, and what must hold after it was broken off or met a fault.
/// </summary>
/// <param name="name">What is done.</param>
public abstract class Scenario(string name)
{
    /// <summary>What is done.</summary>
    public string Name => name;

    /// <summary>The command and its arguments.</summary>
    public abstract IReadOnlyList<string> Command(Room room);

    /// <summary>Does it, with a fault on the way or without.</summary>
    public virtual Ran Run(Room room, Fault? fault) => room.RunWith(fault, Command(room));

    /// <summary>Whether something is to go wrong at a call of that kind: "write ledger.db-wal".</summary>
    public virtual bool IsOfInterest(string call) => true;

    /// <summary>Puts into the room what stands there before; called once, the room is copied for each try.</summary>
    public abstract void Prepare(Room room);

    /// <summary>Runs it to its end without a fault, to learn what it leaves then.</summary>
    public virtual void Learn(Room done)
    {
    }

    /// <summary>Whether the program told the user that it is done.</summary>
    public virtual bool IsAcknowledged(Ran ran) => ran.Status == 0;

    /// <summary>What is wrong afterwards, besides what is judged for every scenario.</summary>
    public abstract IEnumerable<Flaw> Judge(Room room, Ran ran);

    /// <summary>Runs the program as a user would after a failure; what it clears away then is not in the way.</summary>
    public virtual void RunNext(Room room) => room.Run([.. Command(room)]);

    /// <summary>Whether a file may stand in the room when all is over.</summary>
    public virtual bool MayStand(string file) => false;
}
