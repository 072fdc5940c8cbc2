using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>The settings of the whole ledger.</summary>
/// <param name="ledger">The ledger.</param>
internal sealed class SettingsModel(ILedger ledger) : TableModel(ledger)
{
    private Settings _settings = Settings.Default;

    public override string Name => "Settings";

    public override IReadOnlyList<string> Purpose =>
    [
        "The settings of the whole ledger. Their first values are common practice; your own work decides. Enter "
            + "changes the selected one.",
        "Settings of a product, such as its dilution or how long it keeps, are on the Shelf.",
    ];

    public override WorkedExample Example { get; } = new(
        "\n", "Enter on currency opens the form that changes it; it names what is accepted.", "currency");

    public override string Empty => "";

    public override IReadOnlyList<TableColumn> Columns { get; } =
        [new("Setting", 26), new("Value", 20, Least: 10), new("What it is for", 80, Least: 20)];

    public override int Count => Setting.All.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        ScreenAction.Quiet(KeyTable.Undo, "takes back the last change of the setting", row =>
            row >= 0 && Ledger.EntryOf(new(SubjectKind.Setting, IdOf(row))) is null
                ? new MessageStep($"{IdOf(row)} was never changed.")
                : Entries.TakeBack("").Press(row)),
        Entries.Entries,
    ];

    private EntryKeys Entries => new(Ledger, row => new(SubjectKind.Setting, IdOf(row)));

    public override string? OpenLabel => "Change";

    public override void Refresh() => _settings = Ledger.HoldingsOn(Today).Settings;

    public override string IdOf(int row) => Setting.All[row].Name;

    public override string Cell(int row, int column) => column switch
    {
        0 => Setting.All[row].Name,
        1 => Setting.All[row].Text(_settings),
        _ => Setting.All[row].Purpose,
    };

    public override Step? Open(int row) => row < 0 ? null : new FormStep(new SettingForm(Ledger, Setting.All[row]));

    public override IReadOnlyList<Block> Details(int row) => row < 0 ? [] :
    [
        Block.Facts(Setting.All[row].Name, [
            ("Value", Setting.All[row].Text(_settings) is { Length: > 0 } value ? value : "not set"),
            ("For", Setting.All[row].Purpose),
            ("Accepts", Setting.All[row].Accepted),
        ]),
    ];
}
