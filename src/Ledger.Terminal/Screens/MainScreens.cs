using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>The main screens in the order of their digits. A new screen is one line here.</summary>
internal static class MainScreens
{
    /// <summary>The screens of a ledger.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="upkeep">Work on its file.</param>
    /// <param name="file">The file's path.</param>
    public static IReadOnlyList<TableModel> Of(ILedger ledger, IUpkeep upkeep, string file) =>
    [
        new TodayModel(ledger),
        new ShelfModel(ledger),
        new BathsModel(ledger),
        new SessionsModel(ledger),
        new CostsModel(ledger),
        new JournalModel(ledger),
        new HoldersModel(ledger),
        new ReorderModel(ledger),
        new FileModel(ledger, upkeep, file),
    ];

    /// <summary>The tables that have no digit; the list of actions leads to them from everywhere.</summary>
    /// <param name="ledger">The ledger.</param>
    public static IReadOnlyList<TableModel> Others(ILedger ledger) =>
    [
        new PlansModel(ledger),
        new AllSheetsModel(ledger),
        new FaultsModel(ledger),
        new ExposedSheetsModel(ledger),
        new ProcessesModel(ledger),
        new JugsModel(ledger),
        new PrintsModel(ledger),
        new ForgottenModel(ledger),
        new FormatsModel(ledger),
        new SettingsModel(ledger),
    ];
}
