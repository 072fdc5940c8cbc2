using Ledger.Core.Journal;
using Ledger.Terminal.Tables;

namespace Ledger.Terminal.Forms;

/// <summary>A setting of the whole ledger is changed: what it is for, what it accepts, and its value before and after.</summary>
/// <param name="ledger">The ledger.</param>
/// <param name="setting">The setting.</param>
internal sealed class SettingForm(ILedger ledger, Setting setting) : KindForm(ledger, "setting", ("setting", setting.Name))
{
    public override IReadOnlyList<string> Purpose => [setting.Purpose, $"It accepts {setting.Accepted}."];

    /// <summary>What stays as it is needs no entry.</summary>
    public override Saving Save() => After == Before ? Saving.Not($"{setting.Name} stays as it is; nothing was written.") : base.Save();

    private string Before => setting.Text(Holdings.Settings);

    private string After => this["value"].Text.Trim();

    protected override IReadOnlyList<Block> More(Posting posting)
    {
        var (before, after) = (Before, After);
        return
        [
            Block.Of(setting.Purpose, after == before ? "It stays as it is." : $"{(before.Length == 0 ? "not set" : before)} -> {after}"),
            Block.Of("It accepts", $"{setting.Accepted}."),
        ];
    }
}
