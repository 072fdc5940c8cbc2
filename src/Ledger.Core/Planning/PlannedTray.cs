using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Planning;

/// <summary>A tray in its place in the order: what goes into it, for how long, how warm.</summary>
/// <param name="Number">Its place in the order, counting from 1.</param>
/// <param name="Name">What the step is called: presoak, developer, stop, fixer 1, fixer 2, wash aid, wash, final rinse,
/// wetting agent.</param>
/// <param name="Role">What the step does.</param>
/// <param name="Parts">What is poured in: "25 ml syrup", "1225 ml water", "bath F4".</param>
public sealed record PlannedTray(int Number, string Name, ItemRole Role, IReadOnlyList<TrayPart> Parts)
{
    /// <summary>The working solution; null where it does not matter.</summary>
    public Volume? Volume { get; init; }

    /// <summary>How long; null where the process does not say. The developing time stands with each batch.</summary>
    public decimal? Minutes { get; init; }

    /// <summary>How warm, in degrees Celsius; null where it does not matter.</summary>
    public decimal? Celsius { get; init; }

    /// <summary>Whether it is made fresh for each batch.</summary>
    public bool IsPerBatch { get; init; }

    /// <summary>The user's note.</summary>
    public string Note { get; init; } = "";
}

/// <summary>Part of what goes into a tray.</summary>
/// <param name="What">What it is: an item's code, water, a bath.</param>
/// <param name="Amount">How much; null for a bath that is poured in whole.</param>
/// <param name="Exact">The exact figure, where a graduate rounds it; else null.</param>
public sealed record TrayPart(string What, Quantity? Amount, Quantity? Exact = null);
