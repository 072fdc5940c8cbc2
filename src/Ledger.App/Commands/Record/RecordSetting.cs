using System.CommandLine;
using Ledger.App.Output;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record setting: a setting of the whole ledger is changed.</summary>
internal sealed class RecordSetting : RecordCommand
{
    private const int HelpWidth = 76;

    private readonly Argument<string> _setting = Typed.Argument("setting", Text.NotEmpty, "the setting's name");
    private readonly Argument<string> _value = Typed.Argument("value", Text.NotEmpty, "its new value");

    public RecordSetting(Workbench bench)
        : base(bench, "setting", "A setting of the whole ledger is changed.", $"""
            The settings and what each accepts:
            {string.Join('\n', Setting.All.Select(setting => Line(setting.Name, setting.Accepted)))}
            Example: trayledger record setting liquids floz
            """)
    {
        Arguments.Add(_setting);
        Arguments.Add(_value);
    }

    private static string Line(string setting, string accepted) =>
        "  " + string.Join("\n    ", Prose.Wrap($"{setting}: {accepted}", HelpWidth));

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new SettingChange
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Setting = parse.GetRequiredValue(_setting).Trim(),
        Value = parse.GetRequiredValue(_value).Trim(),
    };
}
