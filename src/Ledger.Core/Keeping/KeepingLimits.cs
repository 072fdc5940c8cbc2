namespace Ledger.Core.Keeping;

/// <summary>How long an item keeps, as the user has set it. A limit that is null does not apply.</summary>
/// <param name="SealedDays">Days from the delivery, unopened.</param>
/// <param name="OpenedFullDays">Days after opening while the container is at least half full.</param>
/// <param name="OpenedPartDays">Days after the container fell below half.</param>
/// <param name="WorkingFullDays">Days after mixing, in a full closed bottle.</param>
/// <param name="WorkingPartDays">Days after mixing, in a part-full bottle.</param>
/// <param name="TrayHours">Hours in an open tray.</param>
/// <param name="FloatingLidDays">Days in a tank or tray under a floating lid.</param>
public sealed record KeepingLimits(
    int? SealedDays = null,
    int? OpenedFullDays = null,
    int? OpenedPartDays = null,
    int? WorkingFullDays = null,
    int? WorkingPartDays = null,
    int? TrayHours = null,
    int? FloatingLidDays = null)
{
    /// <summary>Nothing is known about keeping.</summary>
    public static KeepingLimits None { get; } = new();

    /// <summary>Every limit, in the order above.</summary>
    internal IEnumerable<int?> All =>
        [SealedDays, OpenedFullDays, OpenedPartDays, WorkingFullDays, WorkingPartDays, TrayHours, FloatingLidDays];

    /// <summary>
    /// How many whole days a working solution keeps in a container; hours are never rounded up to a day.
    /// </summary>
    public int? DaysIn(WorkingContainer container) => container switch
    {
        WorkingContainer.FullBottle => WorkingFullDays,
        WorkingContainer.PartFullBottle => WorkingPartDays,
        WorkingContainer.FloatingLid => FloatingLidDays,
        _ => TrayHours / 24,
    };
}
