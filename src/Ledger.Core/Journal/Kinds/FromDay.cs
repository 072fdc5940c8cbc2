namespace Ledger.Core.Journal.Kinds;

/// <summary>From when a definition has effect.</summary>
/// <param name="Day">The first day; null for always, the past included.</param>
public sealed record FromDay(LocalDate? Day)
{
    private const string AlwaysWord = "always";

    /// <summary>How it is written: "always", or a day.</summary>
    public static Notation<FromDay> Notation { get; } = new(
        (text, read, terms) => IsAlways(text) ? new FromDay((LocalDate?)null)
            : Notations.Date.Read(text, read, terms) is { IsRead: true } day ? new FromDay(day.Value)
            : Parsed.Not<FromDay>($"{AlwaysWord}, or {Notations.Date.Read(text, read, terms).Accepted}"),
        (from, terms) => from.Day is { } day
            ? Notations.Date.Write(day, terms)
            : AlwaysWord) { Placeholder = "DATE|always" };

    /// <summary>Whether a text says always.</summary>
    public static bool IsAlways(string text) => text.Trim().Equals(AlwaysWord, StringComparison.OrdinalIgnoreCase);

    /// <summary>What a form offers.</summary>
    public static IReadOnlyList<string> Choices { get; } = ["today", AlwaysWord];
}
