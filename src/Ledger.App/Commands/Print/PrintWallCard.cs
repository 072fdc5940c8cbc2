using Ledger.Exchange.Print;

namespace Ledger.App.Commands.Print;

/// <summary>print wall-card: areas, equivalents and capacities for the wall.</summary>
internal sealed class PrintWallCard(Workbench bench) : PrintCommand(
    bench, "wall-card", "Prints a card for the wall: the areas of the formats and the capacities of the baths in use.",
    """
        Example: trayledger print wall-card --html card.html
        """)
{
    protected override PrintedPage Page(ParseResult parse, ILedger ledger, Holdings holdings) => WallCard.Of(holdings);
}
