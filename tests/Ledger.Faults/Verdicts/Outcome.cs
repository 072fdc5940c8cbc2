namespace Ledger.Faults.Verdicts;

/// <summary>What came of one scenario or one kind of damage: a line of the table.</summary>
/// <param name="name">What was tried.</param>
public sealed class Outcome(string name)
{
    private readonly List<Flaw> _flaws = [];
    private readonly Lock _adding = new();
    private int _tried;

    /// <summary>What was tried.</summary>
    public string Name => name;

    /// <summary>How often something was tried.</summary>
    public int Tried => _tried;

    /// <summary>What went wrong.</summary>
    public IReadOnlyList<Flaw> Flaws => _flaws;

    /// <summary>How often it went wrong in a way.</summary>
    public int Count(FlawKind kind) => _flaws.Count(flaw => flaw.Kind == kind);

    /// <summary>Adds what one try showed.</summary>
    public void Add(IEnumerable<Flaw> flaws)
    {
        var found = flaws.ToList();
        lock (_adding)
        {
            _tried++;
            _flaws.AddRange(found);
        }
    }
}
