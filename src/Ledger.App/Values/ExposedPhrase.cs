namespace Ledger.App.Values;

/// <summary>
/// Which of the exposed sheets are meant, as it is typed: "all", "fen80", "fen80 N+1", "fen80 N until 2026-03-01".
/// </summary>
/// <param name="Film">Of this film; null for all.</param>
/// <param name="Group">Of this group; null for all.</param>
/// <param name="Until">Exposed up to this day; null for all.</param>
internal sealed record ExposedPhrase(string? Film, string? Group, LocalDate? Until)
{
    public const string Form = "all | FILM [GROUP] [until DATE]";

    public static ExposedPhrase Parse(string text)
    {
        var phrase = new Phrase(text);
        var film = phrase.Take("all, or the film");
        var read = new ExposedPhrase(film.Equals("all", StringComparison.OrdinalIgnoreCase) ? null : film, null, null);
        while (phrase.TryTake(out var word))
            read = word.ToLowerInvariant() switch
            {
                "until" => read with { Until = Text.Date(phrase.Take("the day after \"until\"")) },
                "group" => read with { Group = phrase.Take("the group after \"group\"") },
                _ when read.Group is null => read with { Group = word },
                _ => throw phrase.Refuse($"\"{word}\" has no place here; exposed sheets are written as {Form}"),
            };
        return read;
    }
}
