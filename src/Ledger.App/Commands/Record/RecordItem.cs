using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.App.Commands.Record;

/// <summary>record item: a new product, or other settings for one that is known.</summary>
internal sealed class RecordItem : RecordCommand
{
    private readonly Argument<string> _code = Typed.Argument(
        "item", Text.NotEmpty, "the short code that commands and labels use, such as fen80");
    private readonly Option<string?> _name = Typed.Option<string?>("--name", "TEXT", Text.NotEmpty, "the full name; otherwise the code");
    private readonly Option<ItemKind?> _kind = Typed.Option(
        "--kind", "KIND", Text.OneOf<ItemKind>(ItemNames.Kinds, "kind"), $"{string.Join(", ", ItemNames.Kinds)}; a new item needs it");

    private readonly Option<ItemRole?> _role = Typed.Option(
        "--role", "ROLE", Text.OneOf<ItemRole>(ItemNames.Roles, "role"), $"what a chemical does: {string.Join(", ", ItemNames.Roles)}");

    private readonly Option<string?> _format = Typed.Option<string?>(
        "--format", "FORMAT", Text.NotEmpty, $"a film's format: {FormatTable.Accepted}, or one of your own");

    private readonly Option<Unit?> _unit = Typed.Option(
        "--unit", "UNIT", Text.OneOf<Unit>(Units.Names, "unit"),
        "what it is counted in; otherwise as its format, ml for a chemical, piece for a supply");

    private readonly Option<Amount?> _pack = Typed.Option<Amount?>(
        "--pack", "AMOUNT", Amount.Parse, "what one pack holds, such as 25 or 1l; a new item needs it");
    private readonly Option<string?> _formula = new("--formula") { HelpName = "TEXT", Description = "the maker's formula version" };
    private readonly Option<string?> _cautions = new("--cautions")
    {
        HelpName = "TEXT",
        Description = "cautions from your own safety data sheet",
    };
    private readonly UseOptions _use = new();
    private readonly KeepingOptions _keeping = new();
    private readonly HandlingOptions _handling = new();
    private readonly OrderOptions _order = new();

    public RecordItem(Workbench bench)
        : base(bench, "item", "A product that is kept, with its settings.", """
            For a known item, what is not said stays as it is, and "none" takes a setting
            away. What happened before keeps the settings it was recorded with.
            Example: trayledger record item syrup --kind chemical --role developer
                       --pack 1l --dilution 1+49
            """)
    {
        Arguments.Add(_code);
        AddOwn(
        [
            _name, _kind, _role, _format, _unit, _pack,
            .. _use.All, .. _keeping.All, .. _handling.All, .. _order.All, _formula, _cautions,
        ]);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings)
    {
        var code = parse.GetRequiredValue(_code).Trim();
        var format = parse.GetValue(_format) is { } named ? holdings.Formats.Find(named) : null;
        var known = holdings.Item(code) ?? New(code, format, parse);
        var item = known with
        {
            Name = parse.GetValue(_name) ?? known.Name,
            Kind = parse.GetValue(_kind) ?? known.Kind,
            Role = parse.GetValue(_role) ?? known.Role,
            Format = format ?? known.Format,
            Unit = parse.GetValue(_unit) ?? known.Unit,
            Formula = parse.GetValue(_formula) ?? known.Formula,
            Cautions = parse.GetValue(_cautions) ?? known.Cautions,
        };
        item = item with { Pack = parse.GetValue(_pack)?.For(item) ?? known.Pack };
        item = _order.Read(parse, _handling.Read(parse, _keeping.Read(parse, _use.Read(parse, item))));
        return new ItemDefinition { Key = frame.Key, Date = frame.Date, Note = frame.Note, Item = item };
    }

    private Item New(string code, Format? format, ParseResult parse)
    {
        var kind = parse.GetValue(_kind)
            ?? throw new FormatException($"{code} is a new item and needs --kind: {string.Join(", ", ItemNames.Kinds)}");
        if (parse.GetValue(_pack) is null)
            throw new FormatException($"{code} is a new item and needs --pack: what one pack of it holds, such as 25 or 1l");
        var unit = kind switch
        {
            ItemKind.Film => format?.Unit ?? Unit.Sheet,
            ItemKind.Chemical => parse.GetValue(_pack)!.Measure ?? Unit.Millilitre,
            _ => Unit.Piece,
        };
        return new() { Code = code, Name = code, Kind = kind, Unit = unit, Pack = new(0, unit) };
    }
}
