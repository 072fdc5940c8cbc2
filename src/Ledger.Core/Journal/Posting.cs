using Ledger.Core.Journal.Entries;

namespace Ledger.Core.Journal;

/// <summary>
/// An entry that passed the rules, with all that it moves and establishes. It is written whole or not at all.
/// </summary>
/// <param name="Entry">The entry.</param>
/// <param name="Summary">What it says in a sentence.</param>
/// <param name="Movements">What it moves.</param>
/// <param name="Facts">What it establishes.</param>
/// <param name="Effects">What changes, before and after.</param>
/// <param name="Remarks">What the user should know before it is saved.</param>
public sealed record Posting(
    Entry Entry,
    string Summary,
    IReadOnlyList<Movement> Movements,
    IReadOnlyList<PostedFact> Facts,
    IReadOnlyList<Effect> Effects,
    IReadOnlyList<string> Remarks)
{
    /// <summary>The names it gives, or gave when it was decided before.</summary>
    public IReadOnlyList<GivenName> Names { get; init; } = [];
}

/// <summary>What an entry changes in one bottle, box or bath.</summary>
/// <param name="What">The container's or bath's code.</param>
/// <param name="Before">What it held, in the user's units.</param>
/// <param name="After">What it will hold.</param>
public sealed record Effect(string What, string Before, string After);
