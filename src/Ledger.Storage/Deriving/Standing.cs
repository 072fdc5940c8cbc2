using System.Text.Json;

namespace Ledger.Storage.Deriving;

/// <summary>What holds of what was said: an entry that was taken back does not, unless that was taken back itself; one
/// that was amended says what it was amended to.</summary>
internal sealed class Standing(SaidLog log)
{
    /// <summary>Whether what was said under a key holds.</summary>
    public bool Holds(string key) => !log.About(key).Any(act => act.Kind == UndoName && Holds(act.Key));

    /// <summary>The entry that acts upon acts are about in the end.</summary>
    public Said? Root(string key)
    {
        var said = log.Find(key);
        while (said is { About: { } about } && log.Find(about) is { } target)
            said = target;
        return said;
    }

    /// <summary>An entry's texts as they hold: as it was said, with what it was amended to.</summary>
    public EntryText TextOf(Said said, out EntryKind kind) => TextOf(said, out kind, isAmended: true);

    private EntryText TextOf(Said said, out EntryKind kind, bool isAmended)
    {
        kind = EntryKinds.Named(said.Kind) ?? throw new FormatException(
            $"this version knows no entry of the kind {said.Kind} (key {said.Key}); use the version that wrote it");
        var problems = new List<FieldProblem>();
        using (var document = JsonDocument.Parse(said.Json))
        {
            var text = EntryJson.Text(kind, document.RootElement, problems);
            foreach (var act in log.About(said.Key)
                .Where(act => isAmended && act.Kind == AmendmentName && Holds(act.Key)))
                Amending.Apply(kind, text, Changes(act), problems);
            if (problems.Count > 0)
                throw new FormatException(
                    $"what was said under {said.Key} cannot be read: {problems[0].Sentence(field => field.JsonName)}");
            // The key is no reference that somebody wrote: it must not be taken for an invoice once more.
            (text.Key, text[CommonFields.Reference]) = (said.Key, "");
            return text;
        }
    }

    /// <summary>The entry that holds.</summary>
    /// <exception cref="FormatException">It cannot be read.</exception>
    public Entry EntryOf(Said said, ReadingTerms terms) => EntryOf(said, terms, isAmended: true);

    /// <summary>The entry as it was said first, whatever put it right since.</summary>
    /// <exception cref="FormatException">It cannot be read.</exception>
    public Entry FirstOf(Said said, ReadingTerms terms) => EntryOf(said, terms, isAmended: false);

    private Entry EntryOf(Said said, ReadingTerms terms, bool isAmended)
    {
        var text = TextOf(said, out var kind, isAmended);
        var reading = EntryReading.Read(kind, text, terms);
        return reading.Entry ?? throw new FormatException(
            $"what was said under {said.Key} cannot be read: {reading.Problems[0].Sentence(field => field.JsonName)}");
    }

    /// <summary>What an entry says in a few words, without the rules, and its note.</summary>
    public (string Words, string Note) WordsOf(Said said)
    {
        var text = TextOf(said, out var kind);
        var words = kind.Fields.Where(field => field.IsArgument || field == kind.NamedBy).Select(field => text[field])
            .Concat(kind.Line is { } line ? text.Lines.Select(one => LinePhrase.Write(line, one)) : [])
            .Where(word => word.Length > 0);
        return ($"{kind.Name} {string.Join(", ", words)}".TrimEnd(), text[CommonFields.Note]);
    }

    /// <summary>Where the entry stands: its day may have been amended.</summary>
    public Position PositionOf(Said said)
    {
        var text = TextOf(said, out _);
        var date = text[CommonFields.FromDay] is { Length: > 0 } from && !FromDay.IsAlways(from)
            ? from
            : text[CommonFields.Date];
        var moved = log.About(said.Key).Where(act => act.Kind == AmendmentName && Holds(act.Key))
            .LastOrDefault(act => Changes(act).Any(IsPlace));
        return new(date.Length > 0 ? date : said.Date, moved is null ? said.Ord : moved.Ord);
    }

    /// <summary>An undo or an amendment as it was said.</summary>
    /// <exception cref="FormatException">It cannot be read.</exception>
    public static Entry ActOf(Said act)
    {
        using var document = JsonDocument.Parse(act.Json);
        var kind = EntryKinds.Named(act.Kind)!;
        return EntryReading.Read(kind, EntryJson.Text(kind, document.RootElement, []), ActTerms).Entry
            ?? throw new FormatException($"the {act.Kind} {act.Key} cannot be read");
    }

    /// <summary>
    /// Whether a change gives an entry another place in its day; the amendment itself stands at that place.
    /// </summary>
    public static bool IsPlace(FieldChange change) => change.Line == 0 && change.Field == CommonFields.Before.Name;

    private static IReadOnlyList<FieldChange> Changes(Said act) => ((Amendment)ActOf(act)).Changes;

    /// <summary>An act is about an entry and needs nothing of what the ledger holds to be read.</summary>
    private static ReadingTerms ActTerms => new()
    {
        Today = new(2000, 1, 1), ItemOf = _ => null, Formats = new(),
    };

    private const string UndoName = "undo";
    private const string AmendmentName = "amendment";
}
