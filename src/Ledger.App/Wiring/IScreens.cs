using Ledger.Storage;

namespace Ledger.App.Wiring;

/// <summary>The screens that stand beside the commands.</summary>
internal interface IScreens
{
    /// <summary>Shows a ledger until the user leaves.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="clock">The clock and the zone that say which day it is.</param>
    /// <param name="theme">The theme's name, or null for the terminal's own colours.</param>
    /// <returns>The exit status.</returns>
    int Show(LedgerFile ledger, ZonedClock clock, string? theme);
}
