using Ledger.Core.Journal;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Tables;

namespace Ledger.Terminal.Screens;

/// <summary>The settings of the whole ledger.</summary>
/// <param name="ledger">The ledger.</param>
internal sealed class SettingsModel(ILedger ledger) : TableModel(ledger)
{
    private static readonly string[] _names = [.. Settings.Names.Keys];
    private Settings _settings = Settings.Default;

    /// <inheritdoc/>
    public override string Name => "Settings";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Purpose =>
    [
        "The settings of the whole ledger: units, limits, how you work in trays, how holders and negatives are named.",
        "A setting holds from the day it is changed; what was recorded before stays as it is. Enter changes the selected one.",
    ];

    /// <inheritdoc/>
    public override string Empty => "There is no setting.";

    /// <inheritdoc/>
    public override IReadOnlyList<TableColumn> Columns { get; } = [new("Setting", 26), new("Value", 60, Least: 20)];

    /// <inheritdoc/>
    public override int Count => _names.Length;

    /// <inheritdoc/>
    public override string? OpenLabel => "Change";

    /// <inheritdoc/>
    public override void Refresh() => _settings = Ledger.HoldingsOn(Today).Settings;

    /// <inheritdoc/>
    public override string IdOf(int row) => _names[row];

    /// <inheritdoc/>
    public override string Cell(int row, int column) => column == 0 ? _names[row] : _settings.Text(_names[row]);

    /// <inheritdoc/>
    public override Step? Open(int row) => row < 0 ? null : new Fill(new SettingForm(Ledger, _names[row]));

    /// <inheritdoc/>
    public override IReadOnlyList<Block> Details(int row) => row < 0 ? [] :
    [
        Block.Facts(_names[row], [
            ("Value", _settings.Text(_names[row])),
            ("Accepted", Settings.Names[_names[row]]),
            ("At first", Settings.Default.Text(_names[row])),
        ]),
    ];
}
