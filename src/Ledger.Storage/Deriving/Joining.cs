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
        var news = other.Where(one => _log.Find(one.Said.Key) is null).ToList();
        if (Conflict(other, news) is { } conflict)
            return Refused(conflict);
        _log.Merge(news.Select(one => one.Said));
        var writer = new EntryWriter(connection);
        foreach (var (said, _) in news.OrderBy(one => one.Said.RecordedAt, StringComparer.Ordinal)
            .ThenBy(one => one.Said.Key, StringComparer.Ordinal))
        {
            // What an earlier version defined stands in its own entries, or in none.
            if (!said.Key.StartsWith(Horizon.Prefix, StringComparison.Ordinal))
                writer.WriteJoined(said);
        }

        // What stood in both may have given further names since, by an amendment of one side.
        foreach (var (said, names) in other)
            _log.Keep(said.Key, names);

        var derivation = new Derivation(connection, inside, today);
        try
        {
            derivation.CountActs();
            SayActs();
            if (news.Count > 0)
                derivation.All();
        }
        catch (NoLongerHoldsException refused)
        {
            return Refused($"together the two do not hold: {refused.Refusal.Sentence}");
        }
        catch (FormatException unreadable)
        {
            return Refused(unreadable.Message);
        }

        return new(news.Count, other.Count - news.Count, null);
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

    /// <summary>What the two say differently, in words that are the same on both sides; null when nothing is.</summary>
    private string? Conflict(
        IReadOnlyList<(Said Said, IReadOnlyList<GivenName> Names)> other,
        List<(Said Said, IReadOnlyList<GivenName> Names)> news)
    {
        var theirs = other.Select(one => one.Said.Key).ToHashSet(StringComparer.Ordinal);
        foreach (var (said, _) in other)
            if (_log.Find(said.Key) is { } own && own.Json != said.Json)
                return $"the two ledgers say different things under {said.Key}; they are not copies of one ledger";
        foreach (var (said, _) in news.Where(one => one.Said.About is not null))
            if (_log.About(said.About!).Any(own => !theirs.Contains(own.Key)))
                return $"entry {said.About} was taken back or amended in both ledgers; take that back in one of them, "
                    + "then join";
        foreach (var (said, names) in other)
            foreach (var name in names)
                if (connection.QueryFirstOrDefault<string?>(
                    "SELECT key FROM said_name WHERE series = @Series AND number = "
                        + "@Number", new { name.Series, name.Number }) is { } own && own != said.Key)
                {
                    var (one, two) = string.CompareOrdinal(own, said.Key) < 0 ? (own, said.Key) : (said.Key, own);
                    return $"both gave the name {name.Number} of {name.Series}: {one} and {two}; "
                        + "take one of them back and record it again in the other ledger, then join";
                }

        return null;
    }
}
