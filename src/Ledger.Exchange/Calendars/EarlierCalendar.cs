namespace Ledger.Exchange.Calendars;

/// <summary>An event of an earlier calendar file.</summary>
/// <param name="Uid">Its identity.</param>
/// <param name="Date">Its day.</param>
/// <param name="Summary">What it said.</param>
/// <param name="Sequence">How often it was changed.</param>
public sealed record EarlierEvent(string Uid, LocalDate Date, string Summary, int Sequence);

/// <summary>
/// What an earlier calendar file of this program held: days without a time. Whatever else stands in it is passed over,
/// so any file can be read.
/// </summary>
/// <remarks>
/// Ical.Net, which writes the file, is not asked to read it: it gives up a whole calendar for one line that it cannot
/// parse, such as another program may have put into the file, and makes the value of every property by reflection, of
/// types that are not all public, so that a native binary would lack their constructors. Wanted are four properties of
/// our own events. The tests hold this reader against the library's.
/// </remarks>
public static class EarlierCalendar
{
    /// <summary>The events of a file's text.</summary>
    public static IReadOnlyList<EarlierEvent> Read(string text)
    {
        var (events, fields, inner) = (new List<EarlierEvent>(), new Dictionary<string, string>(), 0);
        var unfolded = text.ReplaceLineEndings("\n")
            .Replace("\n ", "", StringComparison.Ordinal).Replace("\n\t", "", StringComparison.Ordinal);
        foreach (var line in unfolded.Split('\n'))
            switch (line)
            {
                case "BEGIN:VEVENT": (fields, inner) = ([], 0); break;
                case "END:VEVENT":
                    if (Event(fields) is { } read)
                        events.Add(read);
                    break;
                case ['B', 'E', 'G', 'I', 'N', ':', ..]: inner++; break;
                case ['E', 'N', 'D', ':', ..]: inner--; break;
                case var _ when inner == 0 && line.IndexOf(':', StringComparison.Ordinal) is > 0 and var colon:
                    fields[line[..colon].Split(';')[0].ToUpperInvariant()] = line[(colon + 1)..];
                    break;
            }

        return events;
    }

    private static EarlierEvent? Event(Dictionary<string, string> fields) =>
        fields.TryGetValue("UID", out var uid) && fields.TryGetValue("DTSTART", out var start) && start.Length >= 8
            && DateOnly.TryParseExact(start[..8], "yyyyMMdd", CultureInfo.InvariantCulture,
                DateTimeStyles.None, out var day)
            ? new(uid, LocalDate.FromDateOnly(day), Plain(fields.GetValueOrDefault("SUMMARY", "")),
                int.TryParse(fields.GetValueOrDefault("SEQUENCE"), NumberStyles.None, CultureInfo.InvariantCulture,
                    out var sequence) ? sequence : 0)
            : null;

    /// <summary>A text without the escapes of RFC 5545, 3.3.11.</summary>
    private static string Plain(string text) => text.Replace("\\n", " ", StringComparison.OrdinalIgnoreCase)
        .Replace("\\,", ",", StringComparison.Ordinal).Replace("\\;", ";", StringComparison.Ordinal).Replace("\\\\",
            "\\", StringComparison.Ordinal);
}
