using NodaTime.Text;

namespace Ledger.Storage.Deriving;

/// <summary>
/// What an earlier version left: its entries stay as they were posted, since their words were not kept. What was
/// defined then is put into words before anything else is said, so that later definitions have something to follow.
/// </summary>
internal sealed class Horizon(SqliteConnection connection, SaidLog log)
{
    /// <summary>How the keys of such definitions begin.</summary>
    public const string Prefix = "kept:";

    /// <summary>Puts the definitions of an older ledger into words, once, before its first new entry.</summary>
    public void KeepDefinitions(Func<Holdings> now)
    {
        if (connection.ExecuteScalar<long>("SELECT EXISTS (SELECT 1 FROM said) OR NOT EXISTS (SELECT 1 FROM entry)")
            == 1)
            return;
        // Two copies of one ledger say this alike, so that they can be joined later.
        var last = InstantPattern.ExtendedIso.Parse(
            connection.ExecuteScalar<string>("SELECT max(recorded_at) FROM entry")!).Value;
        var first = connection.ExecuteScalar<string>("SELECT min(date) FROM entry")!;
        var holdings = now();
        var terms = ReadingTerms.Of(holdings, holdings.AsOf);
        var ord = 0;
        foreach (var entry in Definitions(holdings, Dates.Parse(first)!.Value))
        {
            var kind = EntryKinds.Of(entry);
            var name = Deriving.Definitions.NameOf(kind, EntryWriting.Write(kind, entry, terms));
            log.Append(new(
                entry.Key, kind.Name, null, name, first, ++ord, SaidLog.Text(log.Next(last)),
                EntryJson.Write(entry, terms with { IsTyped = false }), ""));
        }
    }

    private IEnumerable<Entry> Definitions(Holdings holdings, LocalDate day) =>
    [
        .. connection.Query<SettingRow>("SELECT name AS Name, value AS Value FROM setting ORDER BY name").Select(row =>
            new SettingChange { Key = $"{Prefix}setting {row.Name}", Date = day, Setting = row.Name,
                Value = row.Value }),
        .. connection.Query<string>("SELECT code FROM film_format ORDER BY code").Select(holdings.Formats.Find)
            .DistinctBy(format => format.Code)
            .Select(format => new FormatDefinition { Key = $"{Prefix}format {format.Code}",
                Date = day, Format = format }),
        .. holdings.Items.OrderBy(item => item.Id.Value).Select(item =>
            new ItemDefinition { Key = $"{Prefix}item {item.Code}", Date = day, Item = item }),
        .. holdings.Processes.Select(process =>
            new ProcessDefinition { Key = $"{Prefix}process {process.Name}", Date = day, Process = process.Name,
                Steps = process.Steps }),
        .. holdings.Film.Holders.Select(holder => new HolderDefinition
        {
            Key = $"{Prefix}holder {holder.Code}", Date = day, Holder = holder.Code, Format = holder.Format,
            Notch = holder.Notch, BoughtOn = holder.BoughtOn, Sides = [.. holder.Sides.Select(side => side.Name)],
        }),
    ];

    internal sealed record SettingRow(string Name, string Value);
}
