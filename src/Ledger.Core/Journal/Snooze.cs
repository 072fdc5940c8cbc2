using Ledger.Core.Journal.Entries;

namespace Ledger.Core.Journal;

/// <summary>A notice that is to be quiet for a while.</summary>
/// <param name="Notice">Its kind.</param>
/// <param name="About">What it is about.</param>
/// <param name="Until">The day on which it is shown again.</param>
/// <param name="Reason">Why it can wait.</param>
public sealed record Snooze(NoticeKind Notice, string About, LocalDate Until, string Reason);

/// <summary>A notice is to be quiet for a while; the last word about one holds.</summary>
/// <param name="Snooze">Which, and until when.</param>
public sealed record NoticeSnoozed(Snooze Snooze) : PostedFact;
