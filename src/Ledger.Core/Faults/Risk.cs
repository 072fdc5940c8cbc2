using Ledger.Core.Tracing;

namespace Ledger.Core.Faults;

/// <summary>How near a sheet is to a fault, the worst first.</summary>
public enum RiskLevel
{
    /// <summary>It came through what is at fault on the day by which the fault was there, or later.</summary>
    AfterFault,

    /// <summary>It lay in the trays with the sheet that is at fault.</summary>
    SameBatch,

    /// <summary>It went through a bath that was past its limits.</summary>
    PastLimit,

    /// <summary>It came straight through what is at fault.</summary>
    Direct,

    /// <summary>It went through a bath after that bath's last good test, or one that was never tested.</summary>
    NotProved,

    /// <summary>It only shares a bath with what is at fault.</summary>
    ByBath,

    /// <summary>A later test found the bath in order.</summary>
    ProvedSince,

    /// <summary>It was tested itself, or treated, since.</summary>
    Settled,
}

/// <summary>The levels in words.</summary>
public static class RiskLevels
{
    private static readonly string[] _names =
    [
        "after the fault", "same batch", "past the limit", "direct", "after the last good test", "by a shared bath",
            "found in order since", "settled",
    ];

    /// <summary>after the fault, same batch, past the limit, direct, after the last good test, by a shared bath, found
    /// in order since, settled.</summary>
    public static string Name(this RiskLevel level) => _names[(int)level];
}

/// <summary>A sheet that shares a fault.</summary>
/// <param name="Card">The sheet.</param>
/// <param name="Level">How near it is.</param>
/// <param name="On">The day on which it came through what is at fault.</param>
/// <param name="Reason">Why it is at risk.</param>
/// <param name="ToDo">What can be done.</param>
/// <param name="IsFirst">Whether it is one of those to look at or test first: one of each batch tells of the
/// others.</param>
public sealed record SheetAtRisk(SheetCard Card, RiskLevel Level, LocalDate On, string Reason, string ToDo,
    bool IsFirst);

/// <summary>A box, a bottle, a bath or a holder side that shares a fault.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Text">What there is of it.</param>
/// <param name="ToDo">What can be done.</param>
public sealed record ThingAtRisk(string Name, string Text, string ToDo);
