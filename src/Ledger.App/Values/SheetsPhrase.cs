using Ledger.Core.Film;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.App.Values;

/// <summary>The sheets of a session as they are typed: "4 fen80 N", "1 fen80 N-1 reject: dust", "6 fen80 25ml from fen80/3".</summary>
internal static class SheetsPhrase
{
    public const string Form = "COUNT FILM [GROUP] [FATE [CAUSE]] [DEVELOPERml|g] [from BOX|SIDES|exposed GROUP] [: NOTE]";

    private static readonly Func<string, Fate?> _fate = Text.OneOf<Fate>(Fates.Names, "fate");

    public static SessionLine Parse(string text)
    {
        var phrase = new Phrase(text);
        var line = new SessionLine
        {
            Sheets = Text.Whole(phrase.Take("how many sheets or rolls"))!.Value,
            Item = phrase.Take("the film"),
            Note = phrase.Note,
        };
        while (true)
            if (line.Fate == Fate.Reject && RejectCauses.Names.FirstOrDefault(phrase.TryTakeName) is { } cause)
                line = line with { Cause = RejectCauses.Named(cause) };
            else if (phrase.TryTake(out var word))
                line = With(word, phrase, line);
            else
                return line;
    }

    private static SessionLine With(string word, Phrase phrase, SessionLine line) => word.ToLowerInvariant() switch
    {
        "from" => From(phrase.Take("the box or holder side after \"from\""), phrase, line),
        "group" => line with { Group = phrase.Take("the group after \"group\"") },
        _ when Fates.Names.Contains(word, StringComparer.OrdinalIgnoreCase) => line with { Fate = _fate(word)!.Value },
        _ when Amount.TryParse(word) is { Measure: Unit.Gram } weighed => line with { DeveloperWeight = weighed.For(null) },
        _ when Amount.TryParse(word) is { Measure: not null } => line with { Developer = Text.Volume(word) },
        _ when line.Group.Length == 0 => line with { Group = word },
        _ => throw phrase.Refuse(
            $"\"{word}\" is neither a fate ({string.Join(", ", Fates.Names)}) nor an amount of developer, and the group is {line.Group}"),
    };

    /// <summary>
    /// A box has a stroke in its name (fen80/3), a side has none (E07-2); the box of exposed sheets is named by its group.
    /// </summary>
    private static SessionLine From(string source, Phrase phrase, SessionLine line)
    {
        if (source.Equals("exposed", StringComparison.OrdinalIgnoreCase))
            return line with { From = ExposedBox.CodeOf(line.Item, phrase.Take("the group after \"exposed\"")) };
        return source.Contains('/', StringComparison.Ordinal) ? line with { Container = source } : line with { From = source };
    }

    /// <summary>Gives each batch its developer, in the order of the lines.</summary>
    public static IReadOnlyList<SessionLine> WithDeveloper(IReadOnlyList<SessionLine> lines, IReadOnlyList<Volume?> developer)
    {
        if (developer.Count > 0 && lines.Any(line => line.Developer is not null || line.DeveloperWeight is not null))
            throw new FormatException("say the developer either in the lines of sheets or with --developer, not in both");
        if (developer.Count > lines.Count)
            throw new FormatException(
                $"--developer was given {developer.Count} times for {lines.Count} line(s) of sheets; at most once a line");
        return [.. lines.Select((line, i) => i < developer.Count ? line with { Developer = developer[i] } : line)];
    }
}
