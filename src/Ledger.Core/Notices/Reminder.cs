namespace Ledger.Core.Notices;

/// <summary>A day to be reminded of, as a calendar shows it.</summary>
/// <param name="Kind">What sort of day it is.</param>
/// <param name="Subject">The container, bath, item, order line or plan it is about; with the kind it names the reminder
/// for good.</param>
/// <param name="Date">The day.</param>
/// <param name="Summary">What is the matter.</param>
/// <param name="Details">The rule or figure behind it, and the step that settles it.</param>
/// <param name="DaysAhead">How many days before it the alarm goes off.</param>
public sealed record Reminder(ReminderKind Kind, string Subject, LocalDate Date, string Summary,
    string Details, int DaysAhead);

/// <summary>What a reminder is about.</summary>
public enum ReminderKind
{
    /// <summary>The last good day of a container.</summary>
    GoodUntil,

    /// <summary>The last good day of a bath.</summary>
    BathGoodUntil,

    /// <summary>The day by which to order.</summary>
    OrderBy,

    /// <summary>The day on which a delivery is expected.</summary>
    Delivery,

    /// <summary>The last day of the old price.</summary>
    PriceRise,

    /// <summary>The day of a planned session.</summary>
    Session,

    /// <summary>The day of a planned trip.</summary>
    Trip,
}

/// <summary>The names of reminders' kinds, as they stand in identities; never changed once given.</summary>
public static class ReminderKinds
{
    private static readonly string[] Names = ["good-until", "bath-good-until", "order-by",
        "delivery", "price-rise", "session", "trip"];

    /// <summary>The kind's name.</summary>
    public static string Name(this ReminderKind kind) => Names[(int)kind];
}
