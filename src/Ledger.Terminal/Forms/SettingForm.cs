using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Terminal.Screens;
using Ledger.Terminal.Tables;

namespace Ledger.Terminal.Forms;

/// <summary>A setting of the whole ledger is changed.</summary>
internal sealed class SettingForm : FormModel
{
    private readonly Setting _setting;
    private readonly string _before;

    /// <summary>Opens the form.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="setting">The setting.</param>
    public SettingForm(ILedger ledger, Setting setting)
        : base(ledger)
    {
        _setting = setting;
        _before = setting.Text(ledger.HoldingsOn(ledger.Today).Settings);
        Value = new(setting.Name, 60) { Hint = $"{ScreenText.Capital(setting.Accepted)}." };
        Value.Offer(_before);
    }

    public override string Title => "Setting";

    public override IReadOnlyList<string> Purpose => [_setting.Purpose, $"It accepts {_setting.Accepted}."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows => [[Value]];

    public FormField Value { get; }

    /// <summary>What stays as it is needs no entry.</summary>
    public override Saving Save() => Value.Text.Trim() == _before ? Saving.Not($"{_setting.Name} stays as it is; nothing was written.") : base.Save();

    protected override Entry Read(Answers answers) => new SettingChange
    {
        Key = EntryKey,
        Date = Ledger.Today,
        Setting = _setting.Name,
        Value = answers.Needed(Value),
    };

    protected override IReadOnlyList<Block> More(Posting posting) =>
    [
        Block.Of(_setting.Purpose, Value.Text.Trim() == _before
            ? "It stays as it is."
            : $"{(_before.Length == 0 ? "not set" : _before)} -> {Value.Text.Trim()}"),
    ];
}
