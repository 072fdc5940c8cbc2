using Ledger.Core.Film;
using Ledger.Core.Sessions;

namespace Ledger.Core.Tracing;

/// <summary>What somebody looks for among all sheets. What is not said does not narrow it down; all that is said must
/// be so.</summary>
public sealed record SheetSearch
{
    /// <summary>Words that must all occur: in its number, subject, film, group, holder side, session, bath, emulsion
    /// number, fate, or where it is filed.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>The film's code.</summary>
    public string? Film { get; init; }

    /// <summary>The development group.</summary>
    public string? Group { get; init; }

    /// <summary>The first day of its exposure, or where that is not known its development, else its loading.</summary>
    public LocalDate? From { get; init; }

    /// <summary>The last day.</summary>
    public LocalDate? To { get; init; }

    /// <summary>A holder, or one of its sides.</summary>
    public string? Holder { get; init; }

    /// <summary>A bath that it went through.</summary>
    public string? Bath { get; init; }

    /// <summary>What became of it by now.</summary>
    public Fate? Fate { get; init; }

    /// <summary>What spoiled it.</summary>
    public RejectCause? Cause { get; init; }

    /// <summary>The emulsion number of its film.</summary>
    public string? Number { get; init; }

    /// <summary>The session that developed it.</summary>
    public string? Session { get; init; }

    /// <summary>Whether a sheet is one that is looked for.</summary>
    public bool Finds(SheetCard card) =>
        Is(card.Item, Film) && Is(card.Group, Group) && Is(card.Emulsion, Number) && Is(card.Session, Session)
        && (From is not { } from || card.Date >= from) && (To is not { } to || card.Date <= to)
        && (Holder is null || Is(card.Side, Holder) || card.Side?.StartsWith($"{Holder.Trim()}-",
            StringComparison.OrdinalIgnoreCase) == true)
        && (Bath is null || card.Baths.Any(bath => Is(bath, Bath)))
        && (Fate is null || card.Fate == Fate) && (Cause is null || card.Cause == Cause)
        && Words.All(word => Texts(card).Any(text => HasWord(text, word.Trim())));

    /// <summary>Whether a word begins so somewhere in a text: "ice" finds "harbour ice" and no "practice", "109" finds
    /// "2026-109".</summary>
    private static bool HasWord(string text, string word)
    {
        for (var at = text.IndexOf(word, StringComparison.OrdinalIgnoreCase); at >= 0;
            at = at + 1 < text.Length ? text.IndexOf(word, at + 1, StringComparison.OrdinalIgnoreCase) : -1)
            if (at == 0 || !char.IsLetterOrDigit(text[at - 1]) || !char.IsLetterOrDigit(word[0]))
                return true;
        return word.Length == 0;
    }

    private static IEnumerable<string> Texts(SheetCard card) => new[]
    {
        card.Name, card.Id.ToString(), card.Subject, card.Item, card.Group, card.Side, card.Session, card.Emulsion,
            card.FateText, card.FiledIn,
    }.Concat(card.Baths).OfType<string>();

    private static bool Is(string? text, string? wanted) => wanted is null
        || wanted.Trim().Equals(text, StringComparison.OrdinalIgnoreCase);
}
