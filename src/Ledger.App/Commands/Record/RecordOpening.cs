using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record opening: a sealed box or bottle is opened.</summary>
internal sealed class RecordOpening : RecordCommand
{
    private readonly Argument<string> _container = Typed.Argument(
        "container", Text.NotEmpty,
        "what is written on it, such as fen80/3; or an item's code, for the sealed one that is reached for first");

    private readonly Option<string?> _batch = new("--batch") { HelpName = "TEXT", Description = "with an item: the batch it must be of" };

    private readonly Option<int?> _envelopes = Typed.Option(
        "--envelopes", "N", Text.Whole, "for a large box of film: how many sealed envelopes of the same size are in it");

    public RecordOpening(Workbench bench)
        : base(bench, "opening", "A sealed box or bottle is opened; its life since opening begins.", """
            Drawing from a sealed box or bottle opens it by itself.
            Example: trayledger record opening fen80/3
            """)
    {
        Arguments.Add(_container);
        AddOwn(_batch, _envelopes);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new Opening
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Container = parse.GetRequiredValue(_container),
        Envelopes = parse.GetValue(_envelopes),
        Batch = parse.GetValue(_batch)?.Trim() ?? "",
    };
}
