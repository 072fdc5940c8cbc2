namespace Ledger.Core.Journal.Entries;

/// <summary>What a notice is about.</summary>
public enum NoticeKind
{
    /// <summary>A bath no longer works: by area, test, sight or replenisher.</summary>
    BathExhausted,

    /// <summary>A bath no longer works: by age.</summary>
    BathExpired,

    /// <summary>A bath will soon reach an end.</summary>
    BathEnding,

    /// <summary>A container is past its last good day.</summary>
    Expired,

    /// <summary>A container will soon be past it.</summary>
    ExpiresSoon,

    /// <summary>There is less of an item than the user's own lower limit.</summary>
    BelowMinimum,

    /// <summary>Film has been in a holder for longer than the user's limit.</summary>
    LoadedLong,

    /// <summary>Exposed film has waited for longer than the user's limit.</summary>
    ExposedLong,

    /// <summary>A holder side has spoiled as many sheets as the user's limit.</summary>
    SideFaulty,

    /// <summary>An item is to be ordered now or within the days of warning.</summary>
    OrderDue,

    /// <summary>An order should have come by now.</summary>
    OrderLate,

    /// <summary>An item will cost more soon.</summary>
    PriceRise,

    /// <summary>A replenished developer is owed replenisher.</summary>
    ReplenisherDue,

    /// <summary>The last control strip of a replenished developer was out of the user's limits.</summary>
    ControlStripOut,

    /// <summary>A waste jug is full or nearly so.</summary>
    JugFull,

    /// <summary>A waste jug has stood for longer than the user's reminder.</summary>
    JugOld,

    /// <summary>A figure is missing without which something cannot be judged.</summary>
    CannotBeSaid,

    /// <summary>A delivery, a box, a bottle or a bath is under suspicion.</summary>
    UnderSuspicion,
}

/// <summary>The names of kinds of notices, as they are typed and stand in JSON.</summary>
public static class NoticeKindNames
{
    /// <summary>All of them, in the order of the kinds.</summary>
    public static IReadOnlyList<string> Kinds { get; } =
    [
        "bath-exhausted", "bath-expired", "bath-ending", "expired", "expires-soon", "below-minimum",
        "loaded-long", "exposed-long", "side-faulty", "order-due", "order-late", "price-rise",
        "replenisher-due", "control-strip-out", "jug-full", "jug-old", "cannot-be-said", "under-suspicion",
    ];

    /// <summary>The kind's name.</summary>
    public static string Name(this NoticeKind kind) => Kinds[(int)kind];
}
