using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.Terminal.Forms;

/// <summary>A setting of the whole ledger is changed.</summary>
internal sealed class SettingForm : FormModel
{
    public SettingForm(ILedger ledger, string setting)
        : base(ledger)
    {
        Setting.Offer(setting);
        Value = new("Value", 60) { Hint = $"Accepted: {Settings.Names[setting]}." };
        Value.Offer(ledger.HoldingsOn(ledger.Today).Settings.Text(setting));
        Rows = [[Setting], [Value], [Note]];
    }

    public override string Title => "Setting";

    public override IReadOnlyList<string> Purpose =>
        ["A setting of the whole ledger is changed. It holds from now on; what was recorded before stays as it is."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Value;

    public FormField Setting { get; } = new("Setting", 26, FieldKind.Choice) { Choices = () => Settings.Names.Keys };

    public FormField Value { get; }

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new SettingChange
    {
        Key = EntryKey,
        Date = Ledger.Today,
        Setting = answers.Needed(Setting),
        Value = answers.Needed(Value),
        Note = Note.Text,
    };
}
