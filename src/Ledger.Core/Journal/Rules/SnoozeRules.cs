using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Rules;

/// <summary>A notice is to be quiet: for a while, and about something that there is.</summary>
internal static class SnoozeRules
{
    /// <summary>What is quiet for longer is forgotten.</summary>
    private const int MostDays = 366;

    public static void Post(NoticeSnooze snooze, Draft draft)
    {
        var reason = Require.Reason(snooze.Reason);
        var last = draft.Date.PlusDays(MostDays);
        Require.That(
            snooze.Until > draft.Date && snooze.Until <= last,
            $"a notice is quiet until a day from {Dates.Text(draft.Date.PlusDays(1))} to {Dates.Text(last)}, not "
                + $"{Dates.Text(snooze.Until)}");
        Require.That(snooze.About.Count > 0, "say what the notice is about");
        var names = snooze.About.Select(name => NameOf(name, draft.Holdings)).Distinct().ToList();
        foreach (var name in names)
            draft.Add(new NoticeSnoozed(new(snooze.Notice, name, snooze.Until, reason)));
        draft.Summary =
            $"snoozed {snooze.Notice.Name()} of {string.Join(", ", names)} until {Dates.Text(snooze.Until)}: {reason}";
    }

    private static string NameOf(string name, Holdings holdings) =>
        holdings.Bath(name)?.Code ?? holdings.Container(name)?.Code ?? holdings.Jug(name)?.Code
            ?? holdings.Film.Side(name)?.Code
            ?? holdings.Film.ExposedBox(name)?.Code ?? holdings.Item(name)?.Code
            ?? throw new RefusedException(
                RefusalKind.Unknown,
                $"nothing that a notice can be about is called \"{name}\"; `show today --json` names what each is "
                    + "about");
}
