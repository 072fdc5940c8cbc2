using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record speed: the user's own speed of a lot.</summary>
internal sealed class RecordSpeed : RecordCommand
{
    private readonly Argument<string> _container = Typed.Argument("container", Text.NotEmpty, "a box of the lot, such as fen80/3");
    private readonly Argument<int?> _speed = Typed.Argument("speed", Text.Whole, "the speed at which you expose it, such as 64");

    public RecordSpeed(Workbench bench)
        : base(bench, "speed", "The speed at which you expose a lot of film.", """
            Example: trayledger record speed fen80/3 64
            """)
    {
        Arguments.Add(_container);
        Arguments.Add(_speed);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new SpeedRating
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Container = parse.GetRequiredValue(_container),
        Speed = parse.GetRequiredValue(_speed)!.Value,
    };
}
