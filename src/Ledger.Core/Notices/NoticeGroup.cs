using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Core.Notices;

/// <summary>
/// Notices of one kind about like things, such as sides that were loaded long ago: one line says them all.
/// </summary>
/// <param name="Notices">The notices, the most pressing first; at least one.</param>
public sealed record NoticeGroup(IReadOnlyList<Notice> Notices)
{
    /// <summary>The most pressing of them.</summary>
    public Notice First => Notices[0];

    /// <summary>What they are about, in their order.</summary>
    public IEnumerable<string> About => Notices.Select(notice => notice.About);

    /// <summary>What is the matter; of several, with the first and how many are like it.</summary>
    public string Text => Notices.Count == 1 ? First.Text
        : First.Text.StartsWith(First.About, StringComparison.Ordinal)
            ? $"{First.About}, like {Notices.Count - 1} more,{First.Text[First.About.Length..]}"
            : $"{Notices.Count} like this: {First.Text}";

    /// <summary>The earliest day that one of them turns on; null when there is none.</summary>
    public LocalDate? By => Notices.Min(notice => notice.By);

    /// <summary>Why: the reason of one; of several, how each differs.</summary>
    public IEnumerable<string> Reasons => Notices.Count == 1 ? [First.Reason]
        : Notices.Select(notice => $"{notice.Text}{(notice.By is { } by ? $", by {Dates.Text(by)}" : "")}")
            .Prepend(First.Reason);

    /// <summary>Gathers notices; a group stands where its most pressing notice stood.</summary>
    public static IReadOnlyList<NoticeGroup> Of(IEnumerable<Notice> notices) =>
        [.. notices.GroupBy(notice => (notice.Kind, notice.Severity, Subject(notice)))
            .Select(group => new NoticeGroup([.. group]))];

    /// <summary>What of a kind belongs together: all sides of holders, all boxes or bottles of an item.</summary>
    private static string Subject(Notice notice) => notice.Kind switch
    {
        NoticeKind.LoadedLong or NoticeKind.ExposedLong or NoticeKind.SideFaulty => "",
        NoticeKind.Expired or NoticeKind.ExpiresSoon => notice.About.Split('/')[0],
        _ => notice.About,
    };
}
