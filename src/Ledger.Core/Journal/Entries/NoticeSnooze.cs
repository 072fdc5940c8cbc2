namespace Ledger.Core.Journal.Entries;

/// <summary>Notices of one kind are to be quiet until a day.</summary>
public sealed record NoticeSnooze : Entry
{
    /// <summary>The kind of notice.</summary>
    public required NoticeKind Notice { get; init; }

    /// <summary>What they are about: baths, boxes, bottles, jugs, sides of holders, items.</summary>
    public required IReadOnlyList<string> About { get; init; }

    /// <summary>The day on which they are shown again.</summary>
    public required LocalDate Until { get; init; }

    /// <summary>Why they can wait.</summary>
    public required string Reason { get; init; }

    /// <inheritdoc/>
    public override string Kind => "snooze";
}
