namespace Ledger.Core.Tracing;

/// <summary>What a trace goes through, in the order from the maker to the picture.</summary>
public enum TraceKind
{
    /// <summary>An emulsion or batch number: all deliveries of an item that bear it.</summary>
    Number,

    /// <summary>A line of a delivery, or a stock solution that was mixed here.</summary>
    Delivery,

    /// <summary>A box, an envelope, a bottle.</summary>
    Container,

    /// <summary>A holder side.</summary>
    Side,

    /// <summary>An exposure.</summary>
    Exposure,

    /// <summary>A box of exposed sheets.</summary>
    ExposedBox,

    /// <summary>A plan.</summary>
    Plan,

    /// <summary>A bath.</summary>
    Bath,

    /// <summary>A session.</summary>
    Session,

    /// <summary>The sheets of a session that lay in the trays together.</summary>
    Batch,

    /// <summary>A sheet, and the negative that it became.</summary>
    Sheet,

    /// <summary>A print session.</summary>
    PrintSession,
}

/// <summary>The names of the kinds as they stand in JSON.</summary>
public static class TraceKinds
{
    /// <summary>number, delivery, container, holder side, exposure, exposed box, plan, bath, session, batch, sheet,
    /// print session.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        "number", "delivery", "container", "holder side", "exposure", "exposed box", "plan", "bath", "session", "batch",
            "sheet", "print session",
    ];

    /// <summary>The kind's name.</summary>
    public static string Name(this TraceKind kind) => Names[(int)kind];
}

/// <summary>One thing that a trace goes through.</summary>
/// <param name="Kind">What sort of thing.</param>
/// <param name="Id">Its number among its kind, in this ledger.</param>
/// <param name="Part">The batch of a session, counting from 1; otherwise 0.</param>
public readonly record struct TraceNode(TraceKind Kind, long Id, int Part = 0);
