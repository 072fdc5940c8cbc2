namespace Ledger.Storage.Deriving;

/// <summary>
/// What two ledgers contradict each other in, once what was said in either stands here. Entries are named by their
/// words, days and keys, which are the same in both; their numbers are not.
/// </summary>
/// <param name="log">What was said in either.</param>
/// <param name="mine">The keys of what this ledger knew.</param>
/// <param name="theirs">The keys of what the other knew.</param>
internal sealed class JoinConflicts(SaidLog log, IReadOnlySet<string> mine, IReadOnlySet<string> theirs)
{
    private const string Cure = "take one of the two back in its ledger (`record undo KEY`), then join";
    private const string CureAlone = "take it back or amend it in its ledger, by that key, then join";

    private readonly Standing _standing = new(log);

    /// <summary>Both took back or amended one entry, and neither took that back; null when none is such.</summary>
    public string? OfActs()
    {
        foreach (var acts in Alone().Where(said => said.IsAct && _standing.Holds(said.Key)).GroupBy(said => said.About))
            if (acts.FirstOrDefault(IsMine) is { } own && acts.FirstOrDefault(act => !IsMine(act)) is { } other)
                return $"{Phrase(log.Find(acts.Key!)!)} was taken back or amended in both ledgers, by "
                    + $"{Both(own, other)}; {Cure}";
        return null;
    }

    /// <summary>Both gave one name to different things that hold.</summary>
    public string OfName(GivenName name, string one, string other) =>
        $"both gave the name {Words(name)}: {Both(log.Find(one)!, log.Find(other)!)}; {Cure} and record it again";

    /// <summary>Both named one thing, each otherwise.</summary>
    public string OfThing(string key, GivenName one, GivenName other)
    {
        var (least, most) = one.Number < other.Number ? (one, other) : (other, one);
        return $"{Phrase(log.Find(key)!)} gave one thing the name {Words(least)} in one ledger and {Words(most)} "
            + "in the other; names stay for ever, so the two cannot be joined: record in one of them what only the "
            + "other knows";
    }

    /// <summary>An entry does not hold beside what only the other ledger knew.</summary>
    public string OfHolding(NoLongerHoldsException refused)
    {
        var failed = log.Find(refused.Entry.Key)!;
        var before = Alone().Where(said => said.Key != failed.Key && _standing.Holds(said.Key)
            && Place(said).CompareTo(Place(failed)) < 0 && Names(said).Overlaps(Names(failed))).ToList();
        Said?[] causes =
        [
            IsAlone(failed) && IsMine(failed) ? null : before.LastOrDefault(IsMine),
            IsAlone(failed) && !IsMine(failed) ? null : before.LastOrDefault(said => !IsMine(said)),
        ];
        var beside = string.Join(" and ", causes.OfType<Said>().Select(Phrase).Order(StringComparer.Ordinal));
        return $"together the two do not hold: {Phrase(failed)} would no longer hold"
            + (beside.Length > 0 ? $" beside {beside}" : "")
            + $": {refused.Reason.Sentence}; {(beside.Length > 0 ? Cure : CureAlone)}";
    }

    /// <summary>What only one of them knew, in the order in which it was recorded.</summary>
    private List<Said> Alone() => [.. log.All().Where(IsAlone)];

    private bool IsAlone(Said said) => mine.Contains(said.Key) != theirs.Contains(said.Key);

    private bool IsMine(Said said) => mine.Contains(said.Key);

    /// <summary>Where what it is about stands; of two recorded at one moment, the keys decide.</summary>
    private (Position, string) Place(Said said) => (_standing.PositionOf(RootOf(said)), RootOf(said).Key);

    private Said RootOf(Said said) => _standing.Root(said.Key)!;

    private string Both(Said one, Said other) =>
        string.Join(" and ", new[] { Phrase(one), Phrase(other) }.Order(StringComparer.Ordinal));

    private string Phrase(Said said) => $"{_standing.WordsOf(said).Words} of {said.Date} (key {said.Key})";

    private static string Words(GivenName name) => name.Series.Split(' ', 2) is ["container", var item]
        ? $"{item}/{name.Number}" : $"{name.Number} of {name.Series}";

    /// <summary>What an entry names: items, boxes, baths, sides. A box is its item's.</summary>
    private HashSet<string> Names(Said said)
    {
        var text = _standing.TextOf(RootOf(said), out var kind);
        var texts = kind.Fields.Where(IsName).Select(field => text[field])
            .Concat(text.Lines.SelectMany(line => kind.Line?.Fields.Where(IsName).Select(field => line[field]) ?? []));
        return
        [
            .. texts.SelectMany(names => names.Split([' ', ',', ';'], StringSplitOptions.RemoveEmptyEntries))
                .Select(name => name.Split('/')[0].ToUpperInvariant()),
        ];
    }

    private static bool IsName(Field field) => field is Field<string> or Field<IReadOnlyList<string>>
        && field.Notation is { Placeholder: not "TEXT", Words: [] };
}
