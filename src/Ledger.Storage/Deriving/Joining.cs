using Ledger.Core.Journal.Rules;
using Ledger.Storage.Files;
using Ledger.Storage.Reading;

namespace Ledger.Storage.Deriving;

/// <summary>
/// Adds what another ledger knows: the union of what was said by key, and everything derived from it. Where the two
/// contradict each other nothing is joined, and each side says so in the same words.
/// </summary>
internal sealed class Joining(SqliteConnection connection, Snapshot inside, LocalDate today)
{
    private readonly SaidLog _log = new(connection);

    /// <summary>Adds what another ledger knows.</summary>
    /// <param name="other">What was said there.</param>
    /// <param name="block">What an earlier version posted there; null when there is none.</param>
    public JoinOutcome Add(IReadOnlyList<(Said Said, IReadOnlyList<GivenName> Names)> other, HorizonBlock? block)
    {
        var own = HorizonBlock.Of(connection);
        if (own is null && block is not null && connection.Number("SELECT NOT EXISTS (SELECT 1 FROM entry)") == 1)
            block.WriteInto(connection);
        else if (own?.Digest != block?.Digest && (block is not null || other.Count > 0))
            return Refused(
                "the two hold different entries of version 0.2.0 or earlier, which kept no words of them; only copies "
                    + "of one such ledger can be joined");
        foreach (var (said, _) in other)
            if (_log.Find(said.Key) is { } known && known.Json != said.Json)
                return Refused(
                    $"the two ledgers say different things under {said.Key}; they are not copies of one ledger");
        var mine = _log.All().Select(said => said.Key).ToHashSet(StringComparer.Ordinal);
        var news = other.Where(one => !mine.Contains(one.Said.Key)).ToList();
        _log.Merge(news.Select(one => one.Said));
        var conflicts = new JoinConflicts(
            _log, mine, other.Select(one => one.Said.Key).ToHashSet(StringComparer.Ordinal));
        try
        {
            var refusal = conflicts.OfActs() ?? KeepNames(other, conflicts) ?? Derived(news, conflicts);
            return refusal is null ? new(news.Count, other.Count - news.Count, null) : Refused(refusal);
        }
        catch (FormatException unreadable)
        {
            return Refused(unreadable.Message);
        }
    }

    /// <summary>Writes what is new and derives everything; what does not hold together, or null.</summary>
    private string? Derived(List<(Said Said, IReadOnlyList<GivenName> Names)> news, JoinConflicts conflicts)
    {
        var writer = new EntryWriter(connection);
        foreach (var (said, _) in news.OrderBy(one => one.Said.RecordedAt, StringComparer.Ordinal)
            .ThenBy(one => one.Said.Key, StringComparer.Ordinal))
        {
            // What an earlier version defined stands in its own entries, or in none.
            if (!said.Key.StartsWith(Horizon.Prefix, StringComparison.Ordinal))
                writer.WriteJoined(said);
        }

        var derivation = new Derivation(connection, inside, today);
        try
        {
            derivation.CountActs();
            SayActs();
            if (news.Count > 0)
                derivation.All();
            return null;
        }
        catch (NoLongerHoldsException refused)
        {
            return conflicts.OfHolding(refused);
        }
    }

    private static JoinOutcome Refused(string sentence) => new(0, 0, sentence);

    private void SayActs()
    {
        foreach (var said in _log.All().Where(said => said.IsAct).ToList())
        {
            if (new JournalReader(inside).Find(said.About!) is { } target)
            {
                var act = Standing.ActOf(said);
                new EntryWriter(connection).WriteSummary(said.Key,
                    PostingRules.SummaryOf(act, target.Number, target.Kind), act.Note);
            }
        }
    }

    /// <summary>
    /// Keeps the names that were given there: by what is new, and by what stood in both and was amended since. Returns
    /// what cannot be kept; of several conflicts the first by its words, which is the same on both sides.
    /// </summary>
    private string? KeepNames(
        IReadOnlyList<(Said Said, IReadOnlyList<GivenName> Names)> other, JoinConflicts conflicts)
    {
        var standing = new Standing(_log);
        return other.SelectMany(one => one.Names.Select(name => KeepName(one.Said.Key, name, standing, conflicts)))
            .OfType<string>().Min(StringComparer.Ordinal);
    }

    /// <summary>
    /// Keeps a name. Where both gave it, an entry that does not hold yields it to the other; a conflict where both do.
    /// </summary>
    private string? KeepName(string key, GivenName name, Standing standing, JoinConflicts conflicts)
    {
        if (_log.NamesOf(key).FirstOrDefault(own => Same(own.Slot, name.Slot)) is { } own)
            return own.Number == name.Number ? null : conflicts.OfThing(key, own, name);
        if (_log.HolderOf(name) is { } holder)
        {
            if (holder.Key == key)
                return conflicts.OfThing(key, holder.Name, name);
            var (holds, held) = (standing.Holds(key), standing.Holds(holder.Key));
            if (holds && held)
                return conflicts.OfName(name, key, holder.Key);
            if (held || (!holds && string.CompareOrdinal(holder.Key, key) < 0))
                return null;
            _log.Yield(holder.Key, holder.Name);
        }

        _log.Keep(key, [name]);
        return null;
    }

    private static bool Same(string one, string other) => one.Equals(other, StringComparison.OrdinalIgnoreCase);
}
