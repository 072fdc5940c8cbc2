using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>
/// A setting of the whole ledger is changed: what it is for, what it accepts, and its value before and after.
/// </summary>
/// <param name="ledger">The ledger.</param>
/// <param name="setting">The setting.</param>
internal sealed class SettingForm(ILedger ledger, Setting setting) : KindForm(ledger, "setting",
    ("setting", setting.Name))
{
    public override IReadOnlyList<string> Purpose => [setting.Purpose, $"It accepts {setting.Accepted}."];

    /// <summary>A value that stays as it is needs no entry.</summary>
    public override Saving Save() =>
        this["value"].Text.Trim() == setting.Text(Holdings.Settings) && this["from_day"].IsEmpty
            ? Saving.Not($"{setting.Name} stays as it is; nothing was written.") : base.Save();

    protected override IReadOnlyList<Block> More(Posting posting)
    {
        var (before, after) = (setting.Text(Holdings.Settings), this["value"].Text.Trim());
        return
        [
            Block.Of(setting.Purpose,
                after == before ? "It stays as it is." : $"{(before.Length == 0 ? "not set" : before)} -> {after}"),
            Block.Of("It accepts", $"{setting.Accepted}."),
        ];
    }
}
