using System.CommandLine;
using Ledger.App.Values;
using Ledger.Core.Keeping;
using Ledger.Core.Stock;

namespace Ledger.App.Commands.Record;

/// <summary>How long an item keeps.</summary>
internal sealed class KeepingOptions
{
    private readonly Option<OptionValue<int?>> _sealed = Days("--sealed-days", "days it keeps sealed, from its delivery");
    private readonly Option<OptionValue<int?>> _openedFull = Days("--opened-full-days", "days it keeps from its opening");
    private readonly Option<OptionValue<int?>> _openedPart = Days("--opened-part-days", "days it keeps from when it fell below half full");
    private readonly Option<OptionValue<int?>> _workingFull = Days(
        "--working-full-days", "days its working solution keeps in a full closed bottle");
    private readonly Option<OptionValue<int?>> _workingPart = Days("--working-part-days", "days its working solution keeps in a part-full bottle");
    private readonly Option<OptionValue<int?>> _tray = OptionValue<int?>.Option(
        "--tray-hours", "HOURS", Text.Whole, "hours its working solution keeps in an open tray");

    private readonly Option<OptionValue<int?>> _floatingLid = Days("--floating-lid-days", "days its working solution keeps under a floating lid");

    public IEnumerable<Option> All => [_sealed, _openedFull, _openedPart, _workingFull, _workingPart, _tray, _floatingLid];

    public Item Read(ParseResult parse, Item item)
    {
        var known = item.Keeping;
        return item with
        {
            Keeping = new KeepingLimits(
                parse.GetValue(_sealed).Or(known.SealedDays),
                parse.GetValue(_openedFull).Or(known.OpenedFullDays),
                parse.GetValue(_openedPart).Or(known.OpenedPartDays),
                parse.GetValue(_workingFull).Or(known.WorkingFullDays),
                parse.GetValue(_workingPart).Or(known.WorkingPartDays),
                parse.GetValue(_tray).Or(known.TrayHours),
                parse.GetValue(_floatingLid).Or(known.FloatingLidDays)),
        };
    }

    private static Option<OptionValue<int?>> Days(string name, string description) => OptionValue<int?>.Option(name, "DAYS", Text.Whole, description);
}
