using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Kinds;

/// <summary>record snooze, snoozes.csv: a notice of Today is to be quiet until a day.</summary>
internal static class SnoozeKind
{
    private static readonly Field<NoticeKind> Notice = new("notice", Notations.OneOf("NOTICE", new Choices<NoticeKind>(
        [.. Enum.GetValues<NoticeKind>().Select(kind => (kind.Name(), kind))])))
    {
        Help = "the kind of notice, such as expires-soon", Example = "expires-soon", IsNeeded = true,
        IsArgument = true, Width = 18,
    };

    private static readonly Field<IReadOnlyList<string>> About = new("about", Notations.LongNames("NAMES"))
    {
        Help = "what it is about: a bath, box, bottle, jug, side of a holder or item; several with commas between them",
        Example = "F4", IsNeeded = true, IsArgument = true, Width = 50,
    };

    private static readonly Field<LocalDate> Until = new("until", Notations.Date)
    {
        Help = "the day on which it is shown again", Example = "2026-04-01", IsNeeded = true, Width = 10,
        Offer = (read, holdings) => Dates.Text(holdings.AsOf.PlusDays(7)),
    };

    private static readonly Field<string> Reason = SharedFields.Reason(
        "why it can wait: ordered by phone, for tests only", "ordered by phone", width: 40);

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<NoticeSnooze>
    {
        Name = "snooze",
        File = "snoozes",
        Title = "Snooze a notice",
        Purpose = "A notice of Today is quiet until a day, with the reason why it can wait; Today goes on to say that "
            + "there is one.",
        Details = [
            "Another kind of notice about the same thing is shown: a bath whose warning is quiet still says that it is "
                + "exhausted."],
        Example = "expired ortho16/1 --until 2026-04-01 --reason \"for tests only\"",
        Bound =
        [
            new(Notice, entry => entry.Notice), new(About, entry => Given.Names(entry.About)),
            new(Until, entry => entry.Until), new(Reason, entry => entry.Reason),
        ],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Notice = values.Of(Notice),
            About = values.Of(About), Until = values.Of(Until), Reason = values.Of(Reason),
        },
    };
}
