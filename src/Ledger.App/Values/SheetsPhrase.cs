using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.App.Values;

/// <summary>The sheets of a session as they are typed: "4 pan100 N", "1 pan100 N-1 reject: dust", "6 pan100 25ml from pan100/3".</summary>
internal static class SheetsPhrase
{
    public const string Form = "COUNT FILM [GROUP] [FATE] [DEVELOPERml] [from BOX] [: NOTE]";

    public static SessionLine Parse(string text)
    {
        var phrase = new Phrase(text);
        var line = new SessionLine
        {
            Sheets = Text.Whole(phrase.Take("how many sheets or rolls"))!.Value,
            Item = phrase.Take("the film"),
            Note = phrase.Note,
        };
        var known = Text.OneOf<Fate>(Fates.Names, "fate");
        while (phrase.TryTake(out var word))
            line = word.ToLowerInvariant() switch
            {
                "from" => line with { Container = phrase.Take("the box after \"from\"") },
                "group" => line with { Group = phrase.Take("the group after \"group\"") },
                _ when Fates.Names.Contains(word, StringComparer.OrdinalIgnoreCase) => line with { Fate = known(word)!.Value },
                _ when Amount.TryParse(word) is { Measure: not null } => line with { Developer = Text.Volume(word) },
                _ when line.Group.Length == 0 => line with { Group = word },
                _ => throw phrase.Refuse(
                    $"\"{word}\" is neither a fate ({string.Join(", ", Fates.Names)}) "
                        + $"nor an amount of developer, and the group is {line.Group}"),
            };
        return line;
    }

    /// <summary>Gives each batch its developer, in the order of the lines.</summary>
    public static IReadOnlyList<SessionLine> WithDeveloper(IReadOnlyList<SessionLine> lines, IReadOnlyList<Volume?> developer)
    {
        if (developer.Count > 0 && lines.Any(line => line.Developer is not null))
            throw new FormatException("say the developer either in the lines of sheets or with --developer, not in both");
        if (developer.Count > lines.Count)
            throw new FormatException(
                $"--developer was given {developer.Count} times for {lines.Count} line(s) of sheets; at most once a line");
        return [.. lines.Select((line, i) => i < developer.Count ? line with { Developer = developer[i] } : line)];
    }
}
