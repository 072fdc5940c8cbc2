using Ledger.Core.Journal;
using Ledger.Terminal.Tables;

namespace Ledger.Terminal.Screens;

/// <summary>The main screens in the order of their digits. A new screen is one line here.</summary>
internal static class MainScreens
{
    /// <summary>The screens of a ledger.</summary>
    public static IReadOnlyList<TableModel> Of(ILedger ledger) =>
    [
        new TodayModel(ledger),
        new ShelfModel(ledger),
        new BathsModel(ledger),
        new SessionsModel(ledger),
        new CostsModel(ledger),
        new JournalModel(ledger),
        new HoldersModel(ledger),
        new ReorderModel(ledger),
    ];
}
