using Ledger.Core.Film;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Core.Journal.Entries;

/// <summary>A session of developing: the sheets, the developer, the baths, and all that the process uses up.</summary>
public sealed record SessionLog : Entry
{
    /// <summary>The session's name, such as S23.</summary>
    public required string Session { get; init; }

    /// <summary>The process's name.</summary>
    public required string Process { get; init; }

    /// <summary>What was developed.</summary>
    public required IReadOnlyList<SessionLine> Lines { get; init; }

    /// <summary>
    /// The baths that the film went through, one of each item and the first one of a pair, divided by commas or blanks
    /// (F9, ST2); what is not named is the only one that fits the process.
    /// </summary>
    public string? Bath { get; init; }

    /// <summary>
    /// Whether more may be used than the book holds; the difference is then booked as found by a count.
    /// </summary>
    public bool BooksDifference { get; init; }

    /// <summary>
    /// Containers to reach for before others of the same item, in this order: what a plan suggested, first expired
    /// first out. May be empty.
    /// </summary>
    public IReadOnlyList<string> DrawFirst { get; init; } = [];

    /// <summary>The name of the plan that the session realises; null for a session that was not planned.</summary>
    public string? Plan { get; init; }

    /// <summary>
    /// Whether any line says what was measured out; otherwise each line is a batch and takes what the process asks.
    /// </summary>
    public bool SaysDeveloper => Lines.Any(line => line.Developer is not null || line.DeveloperWeight is not null);

    /// <summary>
    /// The lines that went through the trays together, dummies left out, by their place among <see cref="Lines"/>
    /// counting from 0. Where no developer is said, each line is a batch; otherwise a line without any went into the
    /// tray together with the one before it.
    /// </summary>
    public IReadOnlyList<IReadOnlyList<int>> Batches()
    {
        var batches = new List<List<int>>();
        var (hasBegun, isSaid) = (false, SaysDeveloper);
        foreach (var (index, line) in Lines.Index().Where(pair => pair.Item.Fate != Fate.Dummy))
        {
            var begins = !isSaid || line.Developer is not null || line.DeveloperWeight is not null;
            if (batches.Count == 0 || (begins && hasBegun))
                batches.Add([]);
            batches[^1].Add(index);
            hasBegun |= begins;
        }

        return batches;
    }

    /// <inheritdoc/>
    public override string Kind => "session";
}

/// <summary>Sheets of one film, one development group and one fate.</summary>
public sealed record SessionLine
{
    /// <summary>The film's code.</summary>
    public required string Item { get; init; }

    /// <summary>How many sheets or rolls.</summary>
    public required int Sheets { get; init; }

    /// <summary>The development group: N, N+1, N-1…; may be empty.</summary>
    public string Group { get; init; } = "";

    /// <summary>
    /// The concentrate measured out. When no line says it, each line is a batch and takes the larger of the dilution's
    /// amount and the minimum for its area.
    /// </summary>
    public Volume? Developer { get; init; }

    /// <summary>
    /// Parts B, C… measured out beside it, in the order of the dilution; none for what the dilution asks beside
    /// <see cref="Developer"/>.
    /// </summary>
    public IReadOnlyList<Volume> OtherParts { get; init; } = [];

    /// <summary>
    /// The same where it was weighed: grams, which the developer's density turns into its volume; null when it was
    /// measured.
    /// </summary>
    public Quantity? DeveloperWeight { get; init; }

    /// <summary>What became of the sheets.</summary>
    public Fate Fate { get; init; }

    /// <summary>The box to draw from; null for the one used first.</summary>
    public string? Container { get; init; }

    /// <summary>
    /// Where known sheets come from instead: holder sides (E07-1, E07-2), a box of exposed sheets (fen80 N), or sheets
    /// by number (#12); null for sheets that are only counted.
    /// </summary>
    public string? From { get; init; }

    /// <summary>What spoiled them, if that is known.</summary>
    public RejectCause? Cause { get; init; }

    /// <summary>The user's note.</summary>
    public string Note { get; init; } = "";
}
