using Ledger.Core.Notices;
using Ledger.Core.Reordering;
using Ledger.Exchange.Calendars;
using Ledger.Storage;
using NodaTime;

namespace Ledger.App.Commands.Files;

/// <summary>The days to be reminded of, for a calendar.</summary>
internal static class CalendarWriting
{
    public static IReadOnlyList<Reminder> Days(LedgerFile ledger)
    {
        var holdings = ledger.HoldingsOn(ledger.Today);
        return Reminders.Of(holdings, ReorderReading.Of(ledger, holdings));
    }

    /// <summary>Writes the file in the place of an older one; returns what was written, as a sentence.</summary>
    public static string Write(LedgerFile ledger, string path, Instant now)
    {
        var days = Days(ledger);
        WholeFile.Write(path, file => CalendarFile.Write(file, days, now));
        return $"{(days.Count == 1 ? "1 day" : $"{days.Count} days")} to be reminded of written to {path}";
    }
}
