using Ledger.Exchange.Calendars;
using Ledger.Storage;

namespace Ledger.App.Commands.Files;

/// <summary>The days to be reminded of, for a calendar.</summary>
internal static class CalendarWriting
{
    /// <summary>How every iCalendar file begins (RFC 5545, section 3.4).</summary>
    private static ReadOnlySpan<byte> Beginning => "BEGIN:VCALENDAR"u8;

    public static IReadOnlyList<Reminder> Days(LedgerFile ledger) => ledger.Read(() =>
    {
        var holdings = ledger.HoldingsOn(ledger.Today);
        return Reminders.Of(holdings, ReorderReading.InUse(ledger, holdings));
    });

    /// <summary>Writes the file in the place of an older calendar.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="path">The file.</param>
    /// <param name="now">When it is written.</param>
    /// <param name="isReplacing">Whether a file of that name that is no calendar is replaced too.</param>
    /// <param name="otherwise">What can be said so that it is, for the end of the refusal.</param>
    /// <exception cref="RefusedByCommandException">The file is the ledger, or holds something else than a
    /// calendar.</exception>
    public static CalendarWritten Write(LedgerFile ledger, string path, Instant now, bool isReplacing = false,
        string otherwise = "")
    {
        WholeFile.RequireOther(ledger.Path, path);
        WholeFile.RequireNoFolder(path);
        var isCalendar = File.Exists(path) && IsCalendar(path);
        if (!isReplacing && File.Exists(path) && !isCalendar)
            throw new RefusedByCommandException($"{path} is not a calendar; name another file{otherwise}");
        var (days, identity) = (Days(ledger), ledger.Identity);
        var cancelled = isCalendar ? CalendarFile.NoLongerSo(File.ReadAllText(path), days, identity, ledger.Today) : [];
        WholeFile.Write(ledger.Path, path, file => CalendarFile.Write(file, days, identity, now, cancelled));
        return new(path, days.Count, cancelled.Count);
    }

    private static bool IsCalendar(string path)
    {
        using var file = File.OpenRead(path);
        Span<byte> start = stackalloc byte[Beginning.Length];
        return file.ReadAtLeast(start, start.Length, throwOnEndOfStream: false) == start.Length
            && start.SequenceEqual(Beginning);
    }
}

/// <summary>A calendar that was written.</summary>
/// <param name="File">Its file.</param>
/// <param name="Days">How many days it reminds of.</param>
/// <param name="Cancelled">How many events of the file that it replaced it cancels.</param>
internal sealed record CalendarWritten(string File, int Days, int Cancelled)
{
    /// <summary>What was written, as a sentence.</summary>
    public string Sentence => $"{Counted.Of(Days, "day")} to be reminded of written to {File}"
        + (Cancelled == 0 ? ""
            : $", {Cancelled} cancelled that no longer hold; some calendars ignore that, and there they are deleted by "
                + "hand");
}
