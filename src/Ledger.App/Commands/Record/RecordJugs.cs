using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.App.Commands.Record;

/// <summary>record jug-start: a jug for used solutions is begun.</summary>
internal sealed class RecordJugStart : RecordCommand
{
    private readonly Argument<string> _jug = Typed.Argument("jug", Text.NotEmpty, "what is written on it, such as J3");
    private readonly Argument<Volume?> _size = Typed.Argument("size", Text.Volume, "what it holds when full, such as 20l");
    private readonly Argument<string> _contents = Typed.Argument("contents", Text.NotEmpty, "what goes into it, such as \"used fixer\"");

    public RecordJugStart(Workbench bench)
        : base(bench, "jug-start", "A jug for used solutions is begun.", "Example: trayledger record jug-start J3 20l \"used fixer\"")
    {
        Arguments.Add(_jug);
        Arguments.Add(_size);
        Arguments.Add(_contents);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new JugStart
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Jug = parse.GetRequiredValue(_jug),
        Size = parse.GetValue(_size)!.Value,
        Contents = parse.GetRequiredValue(_contents),
    };
}

/// <summary>record jug-filling: used solution goes into a jug, apart from a bath that is poured out.</summary>
internal sealed class RecordJugFilling : RecordCommand
{
    private readonly Argument<string> _jug = Typed.Argument("jug", Text.NotEmpty, "the jug");
    private readonly Argument<Volume?> _volume = Typed.Argument("volume", Text.Volume, "how much, such as 1.5l");
    private readonly Argument<string> _what = Typed.Argument("what", Text.NotEmpty, "what it is, such as \"first rinse\"");

    public RecordJugFilling(Workbench bench)
        : base(bench, "jug-filling", "Used solution goes into a jug.", """
            A bath goes into one with `record discard BATH --jug JUG`.
            Example: trayledger record jug-filling J2 500ml "first rinse"
            """)
    {
        Arguments.Add(_jug);
        Arguments.Add(_volume);
        Arguments.Add(_what);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new JugFilling
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Jug = parse.GetRequiredValue(_jug),
        Volume = parse.GetValue(_volume)!.Value,
        What = parse.GetRequiredValue(_what),
    };
}

/// <summary>record jug-handover: a jug is handed over.</summary>
internal sealed class RecordJugHandover : RecordCommand
{
    private readonly Argument<string> _jug = Typed.Argument("jug", Text.NotEmpty, "the jug");
    private readonly Argument<string> _to = Typed.Argument("to", Text.NotEmpty, "where it goes");

    public RecordJugHandover(Workbench bench)
        : base(bench, "jug-handover", "A jug is handed over.", """
            Whether that place may take it is for your local rules to say.
            Example: trayledger record jug-handover J2 "collection point"
            """)
    {
        Arguments.Add(_jug);
        Arguments.Add(_to);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new JugHandover
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Jug = parse.GetRequiredValue(_jug),
        To = parse.GetRequiredValue(_to),
    };
}
