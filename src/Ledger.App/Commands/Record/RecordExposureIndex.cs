using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record exposure-index: the user's exposure index of a lot.</summary>
internal sealed class RecordExposureIndex : RecordCommand
{
    private readonly Argument<string> _container = Typed.Argument("container", Text.NotEmpty, "a box of the lot, such as fen80/3");
    private readonly Argument<int?> _exposureIndex = Typed.Argument("exposure-index", Text.Whole, "the exposure index at which you expose it, such as 64");

    public RecordExposureIndex(Workbench bench)
        : base(bench, "exposure-index", "The exposure index at which you expose a lot of film.", """
            Example: trayledger record exposure-index fen80/3 64
            """)
    {
        Arguments.Add(_container);
        Arguments.Add(_exposureIndex);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new ExposureIndexSetting
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Container = parse.GetRequiredValue(_container),
        ExposureIndex = parse.GetRequiredValue(_exposureIndex)!.Value,
    };
}
