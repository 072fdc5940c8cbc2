using Ledger.Core.Measures;
using NodaTime;

namespace Ledger.Exchange.Import.Rows;

/// <summary>Dates in a row.</summary>
internal static class RowDates
{
    private const string Accepted = "accepted is a date that exists, written as 2026-03-15";

    /// <summary>The date in a column that must hold one.</summary>
    public static LocalDate Date(this Row row, string column)
    {
        if (row.DateOrNull(column) is { } date)
            return date;
        if (row.Text(column).Length == 0)
            row.Refuse(column, Accepted);
        return default;
    }

    /// <summary>The date in a column that may be empty.</summary>
    public static LocalDate? DateOrNull(this Row row, string column)
    {
        var text = row.Text(column);
        if (text.Length == 0)
            return null;
        // Far outside what anybody records, but near enough to the calendar's ends that moving it in time could fail.
        if (Dates.Parse(text) is { Year: >= 1000 and < 9000 } date)
            return row.Shifted(date);
        row.Refuse(column, Accepted);
        return null;
    }
}
