namespace Ledger.Core.Journal.Kinds;

/// <summary>What every entry has.</summary>
public static class CommonFields
{
    /// <summary>The day it happened; today unless said.</summary>
    public static Field<LocalDate> Date { get; } = new("date", Notations.Date)
    {
        Help = "the day it happened; otherwise today", Example = "2026-03-15", Width = 10,
    };

    /// <summary>The user's note.</summary>
    public static Field<string> Note { get; } = new("note", Notations.Line(10_000))
    {
        Help = "a note of your own", Example = "", Width = 50,
    };

    /// <summary>
    /// The entry of the same day that it happened before: its place in the day, where the order of recording is not the
    /// right one.
    /// </summary>
    public static Field<string> Before { get; } = new("before", Notations.Line(500))
    {
        Help = "the entry of the same day that it happened before, by its number or reference; otherwise it comes last "
            + "in its day", Example = "", Width = 24,
    };

    /// <summary>From when a definition has effect.</summary>
    public static Field<FromDay> FromDay { get; } = new("from_day", Kinds.FromDay.Notation)
    {
        Help = "from which day it has effect: a date, today, or always; otherwise the day of the entry",
        Example = "", Width = 12, Choices = (_, _) => Kinds.FromDay.Choices,
    };

    /// <summary>Whether it is so although it is unlikely: what would be asked about is answered.</summary>
    public static Field<bool> Anyway { get; } = new("anyway", Notations.YesNo)
    {
        Help = "it is so, although the program asked whether it is a slip", Example = "no", Width = 4,
    };

    /// <summary>The caller's own name for the entry: sending it again under the same one adds nothing.</summary>
    public static Field<string> Reference { get; } = new("reference", Notations.Line(500))
    {
        Help = "your own name for the entry: sending it again under the same one adds nothing", Example = "",
    };
}
