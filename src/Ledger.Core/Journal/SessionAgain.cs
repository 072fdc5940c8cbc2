using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Core.Journal;

/// <summary>
/// Another session like one that was held: its batches one by one, what was measured out for each, and its baths.
/// </summary>
public static class SessionAgain
{
    /// <summary>
    /// The session once more, with other sheets of the same film; every sheet becomes a negative until the user says
    /// otherwise.
    /// </summary>
    /// <param name="last">The session as the journal remembers it.</param>
    /// <param name="said">What was said of it; null of a session of before 0.3.0, of which the developer is known as a
    /// sum alone.</param>
    /// <param name="holdings">What the ledger holds now: a bath that is no longer in use is not named.</param>
    public static SessionLog Of(SessionRecord last, SessionLog? said, Holdings holdings) => new()
    {
        Key = $"again {last.Session}",
        Date = holdings.AsOf,
        Session = $"after {last.Session}",
        Process = last.Process,
        Bath = said?.Bath is { } baths && new SessionBaths(holdings, holdings.AsOf).AreInUse(baths) ? baths : null,
        Lines = said is null ? Remembered(last) : [.. Lines(said)],
    };

    /// <summary>
    /// Of each batch a line for each film and group, the first with all that was measured out for the batch; dummies
    /// behind them.
    /// </summary>
    private static IEnumerable<SessionLine> Lines(SessionLog said)
    {
        foreach (var batch in said.Batches())
        {
            var lines = batch.Select(line => said.Lines[line]).ToList();
            var dose = lines.Find(line => line.Developer is not null || line.DeveloperWeight is not null);
            foreach (var (i,
                alike) in lines.GroupBy(line => (Item: line.Item.ToUpperInvariant(),
                    Group: line.Group.Trim().ToUpperInvariant())).Index())
                yield return new()
                {
                    Item = alike.First().Item, Group = alike.First().Group, Sheets = alike.Sum(line => line.Sheets),
                    Developer = i == 0 ? dose?.Developer : null,
                    DeveloperWeight = i == 0 ? dose?.DeveloperWeight : null,
                    OtherParts = i == 0 ? dose?.OtherParts ?? [] : [],
                };
            foreach (var dummy in said.Lines.Skip(batch[^1] + 1).TakeWhile(line => line.Fate == Fate.Dummy))
                yield return new() { Item = dummy.Item, Sheets = dummy.Sheets, Group = dummy.Group, Fate = Fate.Dummy };
        }
    }

    /// <summary>A line for each film and group; the developer is known as a sum and shared by area.</summary>
    private static List<SessionLine> Remembered(SessionRecord last)
    {
        var alike = last.Lines.Where(line => line.Fate != Fate.Dummy).GroupBy(line => (line.Item, line.Group)).ToList();
        var developer = Share.Split(last.Developer.Microlitres,
            [.. alike.Select(lines => lines.Sum(line => line.Area.Hundredths))]);
        return
        [
            .. alike.Select((lines, i) => new SessionLine
            {
                Item = lines.Key.Item, Group = lines.Key.Group, Sheets = (int)lines.Sum(line => line.Sheets),
                Developer = developer[i] == 0 ? null : Volume.FromMicrolitres(developer[i]),
            }),
        ];
    }
}
