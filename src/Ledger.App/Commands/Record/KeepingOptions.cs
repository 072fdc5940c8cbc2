using System.CommandLine;
using Ledger.App.Values;
using Ledger.Core.Keeping;
using Ledger.Core.Stock;

namespace Ledger.App.Commands.Record;

/// <summary>How long an item keeps.</summary>
internal sealed class KeepingOptions
{
    private readonly Option<int?> _sealed = Days("--sealed-days", "days it keeps sealed, from its delivery");
    private readonly Option<int?> _openedFull = Days("--opened-full-days", "days it keeps from its opening");
    private readonly Option<int?> _openedPart = Days("--opened-part-days", "days it keeps from when it fell below half full");
    private readonly Option<int?> _workingFull = Days("--working-full-days", "days its working solution keeps in a full closed bottle");
    private readonly Option<int?> _workingPart = Days("--working-part-days", "days its working solution keeps in a part-full bottle");
    private readonly Option<int?> _tray = Typed.Option(
        "--tray-hours", "HOURS", Text.OrNone(Text.Whole), "hours its working solution keeps in an open tray");

    public IEnumerable<Option> All => [_sealed, _openedFull, _openedPart, _workingFull, _workingPart, _tray];

    public Item Read(ParseResult parse, Item item)
    {
        var known = item.Keeping;
        return item with
        {
            Keeping = new KeepingLimits(
                _sealed.Or(known.SealedDays, parse),
                _openedFull.Or(known.OpenedFullDays, parse),
                _openedPart.Or(known.OpenedPartDays, parse),
                _workingFull.Or(known.WorkingFullDays, parse),
                _workingPart.Or(known.WorkingPartDays, parse),
                _tray.Or(known.TrayHours, parse)),
        };
    }

    private static Option<int?> Days(string name, string description) => Typed.Option(name, "DAYS", Text.OrNone(Text.Whole), description);
}
