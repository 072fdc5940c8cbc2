using Ledger.Core.Journal.Entries;

namespace Ledger.Core.Notices;

/// <summary>Something that needs the user.</summary>
/// <param name="Kind">What sort of thing it is.</param>
/// <param name="Severity">How pressing it is.</param>
/// <param name="About">The container, bath, jug or item it is about.</param>
/// <param name="Text">What is the matter.</param>
/// <param name="Reason">The rule or figure behind it.</param>
/// <param name="Step">The one step that settles it.</param>
/// <param name="By">The day it turns on, past or to come; null when there is none.</param>
public sealed record Notice(
    NoticeKind Kind, Severity Severity, string About, string Text, string Reason, string Step, LocalDate? By)
{
    /// <summary>What it is and why, in a sentence.</summary>
    public string Sentence => $"{Text}: {Reason}.";
}

/// <summary>How pressing a notice is.</summary>
public enum Severity
{
    /// <summary>Now: the next session would suffer.</summary>
    Now,

    /// <summary>Soon.</summary>
    Soon,

    /// <summary>Good to know.</summary>
    Note,
}

/// <summary>The names of severities as they stand in JSON.</summary>
public static class NoticeNames
{
    private static readonly string[] Severities = ["now", "soon", "note"];

    /// <summary>The severity's name.</summary>
    public static string Name(this Severity severity) => Severities[(int)severity];
}
