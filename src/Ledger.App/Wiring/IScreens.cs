using Ledger.Storage;

namespace Ledger.App.Wiring;

/// <summary>The screens that stand beside the commands.</summary>
internal interface IScreens
{
    /// <summary>Shows a ledger until the user leaves.</summary>
    void Show(LedgerFile ledger);
}
