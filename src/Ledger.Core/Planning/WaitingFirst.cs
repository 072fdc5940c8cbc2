using Ledger.Core.Film;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Sessions;

namespace Ledger.Core.Planning;

/// <summary>
/// Sheets that wait to be developed come before film out of a box: they left the box when they were loaded, and counted
/// out of it once more they would be counted twice.
/// </summary>
public static class WaitingFirst
{
    /// <summary>
    /// The lines with the sheets that wait named in them, the first loaded first; where fewer wait, the rest has a line
    /// of its own.
    /// </summary>
    public static SessionLog In(SessionLog session, Holdings holdings)
    {
        ArgumentNullException.ThrowIfNull(session);
        var taken = new HashSet<SheetId>();
        return session with { Lines = [.. session.Lines.SelectMany(line => Named(line, holdings, session, taken))] };
    }

    /// <summary>
    /// The first sheets that wait: of one film and group, no more than go through the trays together; null when none
    /// waits.
    /// </summary>
    public static RequestedSheets? Batch(Holdings holdings) =>
        KnownSheets.Exposed(holdings, until: holdings.AsOf).GroupBy(sheet => (sheet.Item, sheet.Exposure!.Group))
            .FirstOrDefault() is { } first
            && holdings.Item(first.Key.Item)?.Format is { } format
            ? Request([.. first.Take(holdings.Settings.Tray.Limit.Of(format))], holdings) : null;

    /// <summary>
    /// What the sheets are called where they wait: by the side they are in, or by number in a box of exposed sheets.
    /// </summary>
    public static string Names(IEnumerable<Sheet> sheets, Holdings holdings)
    {
        ArgumentNullException.ThrowIfNull(holdings);
        return string.Join(", ", sheets.Select(sheet => holdings.Film.Side(sheet.At)?.Code ?? sheet.Id.ToString()));
    }

    private static RequestedSheets Request(List<Sheet> sheets, Holdings holdings) => new()
    {
        Film = sheets[0].Item, Group = sheets[0].Exposure!.Group, Count = sheets.Count, From = Names(sheets, holdings),
    };

    private static IEnumerable<SessionLine> Named(SessionLine line, Holdings holdings, SessionLog session,
        HashSet<SheetId> taken)
    {
        var waiting = line.From is not null || line.Fate == Fate.Dummy ? []
            : KnownSheets.Exposed(holdings, line.Item, line.Group, session.Date)
                .Where(sheet => !taken.Contains(sheet.Id)).Take(line.Sheets).ToList();
        if (waiting.Count == 0)
            return [line];
        taken.UnionWith(waiting.Select(sheet => sheet.Id));
        var known = line with { Sheets = waiting.Count, From = Names(waiting, holdings) };
        return waiting.Count == line.Sheets ? [known]
            : [known, line with { Sheets = line.Sheets - waiting.Count, Developer = null, DeveloperWeight = null,
                OtherParts = [] }];
    }
}
