using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.App.Commands.Record;

/// <summary>record format: a format of the user's own, or another area for a known one.</summary>
internal sealed class RecordFormat : RecordCommand
{
    private readonly Argument<string> _format = Typed.Argument("format", Text.NotEmpty, "its name, such as 220 or postcard");
    private readonly Option<Area?> _area = Typed.Option("--area", "AREA", AreaOf, "the area of one, such as \"154 sqin\" or \"990 cm2\"");
    private readonly Option<bool> _isRoll = new("--roll") { Description = "it is counted in rolls, not in sheets" };

    public RecordFormat(Workbench bench)
        : base(bench, "format", "A format of your own, or another area for a known one.", """
            Sizes need no definition: 7x17in and 100x125mm have the area that they say.
            Sessions of the past keep the area they were recorded with; `show formats`
            lists the formats.
            Examples: trayledger record format 220 --roll --area "160 sqin"
                      trayledger record format 120 --area "490 cm2"
            """)
    {
        Arguments.Add(_format);
        _area.Required = true;
        AddOwn(_area, _isRoll);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings)
    {
        var code = parse.GetRequiredValue(_format).Trim();
        var isRoll = parse.GetValue(_isRoll) || (holdings.Formats.TryFind(code, out var known) && known.Unit == Unit.Roll);
        return new FormatDefinition
        {
            Key = frame.Key,
            Date = frame.Date,
            Note = frame.Note,
            Format = new(code, parse.GetRequiredValue(_area)!.Value, isRoll ? Unit.Roll : Unit.Sheet),
        };
    }

    private static Area? AreaOf(string text) => Area.Read(text)
        ?? throw new FormatException($"\"{text}\" is not an area; write one such as \"80 sqin\" or \"516.13 cm2\"");
}
