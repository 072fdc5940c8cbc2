using Ledger.Core.Journal.Entries;

namespace Ledger.Core.Journal.Kinds;

/// <summary>
/// Every kind of entry, in the order in which entries of one day are posted when they come from files.
/// </summary>
public static class EntryKinds
{
    /// <summary>All kinds. Settings stand first: the others are read and shown by them.</summary>
    public static IReadOnlyList<EntryKind> All { get; } =
    [
        SettingKind.Kind,
        FormatDefinitionKind.Kind,
        ItemDefinitionKind.Kind,
        ProcessDefinitionKind.Kind,
        HolderDefinitionKind.Kind,
        OrderKind.Kind,
        OrderChangeKind.Kind,
        OrderCancellationKind.Kind,
        DeliveryKind.Kind,
        StorageKind.Kind,
        OpeningKind.Kind,
        ExposureIndexKind.Kind,
        CleaningKind.Kind,
        LoadKind.Kind,
        ExposureKind.Kind,
        UnloadKind.Kind,
        DecantingKind.Kind,
        StockSolutionKind.Kind,
        JugStartKind.Kind,
        JugFillingKind.Kind,
        JugHandoverKind.Kind,
        BathKind.Kind,
        RotationKind.Kind,
        TopUpKind.Kind,
        CountKind.Kind,
        DiscardKind.Kind,
        SessionKind.Kind,
        PrintSessionKind.Kind,
        ClearingTestKind.Kind,
        ObservationKind.Kind,
        IndicatorKind.Kind,
        SilverTestKind.Kind,
        ResidualTestKind.Kind,
        ControlStripKind.Kind,
        BathStorageKind.Kind,
        ServiceKind.Kind,
        KeeperKind.Kind,
        FateKind.Kind,
        SheetNoteKind.Kind,
        FilingKind.Kind,
        SuspicionKind.Kind,
        ClearanceKind.Kind,
        PriceRiseKind.Kind,
        OrderTermsKind.Kind,
        PlanKind.Kind,
        PlanEndingKind.Kind,
        SnoozeKind.Kind,
        AmendmentKind.Kind,
        UndoKind.Kind,
    ];

    /// <summary>The kind of that name, in any case; null when there is none.</summary>
    public static EntryKind? Named(string name) =>
        All.FirstOrDefault(kind => kind.Name.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>The kind of an entry.</summary>
    /// <exception cref="ArgumentException">Nothing describes it.</exception>
    public static EntryKind Of(Entry entry) =>
        All.FirstOrDefault(kind => kind.Describes(entry))
            ?? throw new ArgumentException($"nothing describes a {entry.Kind}", nameof(entry));
}
