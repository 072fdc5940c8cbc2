namespace Ledger.App.Commands.Show;

/// <summary>show settings: the settings of the whole ledger and what they are set to.</summary>
internal sealed class ShowSettings(Workbench bench) : ShowCommand<IReadOnlyList<Setting>>(
    bench, "settings", "Shows the settings of the whole ledger.", """
    `trayledger record setting` changes one.
    Example: trayledger show settings
    """, _shape)
{
    private static readonly Shape<IReadOnlyList<Setting>> _shape = new Shape<IReadOnlyList<Setting>>()
        .Table("settings", (settings, _) => settings, new Shape<Setting>()
            .Text("setting", setting => setting.Name)
            .Text("value", (setting, view) => setting.Text(view.Holdings.Settings))
            .Text("purpose", setting => setting.Purpose)
            .Text("accepted", setting => setting.Accepted),
            (_, rows) => rows);

    protected override IReadOnlyList<Setting> Read(View view, ParseResult parse) => Setting.All;

    protected override void WriteText(IReadOnlyList<Setting> settings, View view, TextWriter output)
    {
        foreach (var setting in settings)
        {
            output.WriteLine(
                $"{setting.Name}: "
                    + $"{(setting.Text(view.Holdings.Settings) is { Length: > 0 } value ? value : "not set")}");
            output.WriteProse(setting.Purpose, view.Width, "    ");
        }
    }
}
