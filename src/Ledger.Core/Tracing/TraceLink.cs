namespace Ledger.Core.Tracing;

/// <summary>When something happened: its day, and its place among what happened on that day.</summary>
/// <param name="Date">The day.</param>
/// <param name="Order">Grows within the day.</param>
public readonly record struct Moment(LocalDate Date, long Order) : IComparable<Moment>
{
    /// <summary>Before everything.</summary>
    public static Moment First { get; } = new(LocalDate.MinIsoValue, long.MinValue);

    /// <summary>After everything.</summary>
    public static Moment Last { get; } = new(LocalDate.MaxIsoValue, long.MaxValue);

    /// <inheritdoc/>
    public int CompareTo(Moment other) => Date != other.Date ? Date.CompareTo(other.Date)
        : Order.CompareTo(other.Order);

    /// <summary>Whether one is before the other.</summary>
    public static bool operator <(Moment one, Moment other) => one.CompareTo(other) < 0;

    /// <summary>Whether one is after the other.</summary>
    public static bool operator >(Moment one, Moment other) => one.CompareTo(other) > 0;

    /// <summary>Whether one is not after the other.</summary>
    public static bool operator <=(Moment one, Moment other) => one.CompareTo(other) <= 0;

    /// <summary>Whether one is not before the other.</summary>
    public static bool operator >=(Moment one, Moment other) => one.CompareTo(other) >= 0;
}

/// <summary>Something of the one went into the other, or through it, at a moment: a sheet came out of a box, a session
/// went through a bath.</summary>
/// <param name="From">What it came from.</param>
/// <param name="To">What it came to.</param>
/// <param name="At">When.</param>
public sealed record TraceLink(TraceNode From, TraceNode To, Moment At)
{
    /// <summary>
    /// Whether what goes along it is only a share of something that many have in common: what a bath gives to a
    /// session, and a sheet that was put back
    /// among others and may be any of them. All other links are direct.
    /// </summary>
    public bool IsShared => From.Kind == TraceKind.Bath
        || (From.Kind, To.Kind) == (TraceKind.Sheet, TraceKind.Container);
}
