using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Terminal.Forms;

/// <summary>A format of the user's own, or another area for a known one.</summary>
internal sealed class FormatForm : FormModel
{
    private static readonly string[] _units = ["sheet", "roll"];

    public FormatForm(ILedger ledger, Format? format)
        : base(ledger)
    {
        Format.Offer(format?.Code);
        Unit.Offer((format?.Unit ?? Core.Measures.Unit.Sheet).Name());
        Area.Offer(format is null ? "" : $"{Scaled.ToText(format.Area.SquareInches, 4)} sqin");
        Rows = [[Format, Unit], [Area], [Note]];
    }

    public override string Title => "Format";

    public override IReadOnlyList<string> Purpose =>
    [
        "A format of your own, or another area for a known one: a roll of 120 counts as 80 sq in by convention only.",
        "Sizes such as 7x17in and 100x125mm need no definition. Sessions of the past keep the area they were recorded with.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Format.IsEmpty ? Format : Area;

    public FormField Format { get; } = new("Format", 20) { Hint = "A short name, such as 220 or postcard." };

    public FormField Unit { get; } = new("counted in", 6, FieldKind.Choice) { Choices = () => _units, Hint = "A sheet or a roll." };

    public FormField Area { get; } = new("Area of one", 16) { Hint = "In square inches or square centimetres: 80 sqin, 516.13 cm2." };

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers)
    {
        var (code, unit) = (answers.Needed(Format), answers.OneOf(Unit, _units) == 1 ? Core.Measures.Unit.Roll : Core.Measures.Unit.Sheet);
        var area = Core.Measures.Area.Read(answers.Needed(Area));
        if (area is null && !Area.IsEmpty)
            answers.Problem($"Area of one: \"{Area.Text.Trim()}\" is not accepted; write 80 sqin or 516.13 cm2");
        return new FormatDefinition
        {
            Key = EntryKey,
            Date = Ledger.Today,
            Format = new(code, area ?? Core.Measures.Area.Unit80, unit),
            Note = Note.Text,
        };
    }
}
