using System.CommandLine;
using Ledger.App.Values;
using Ledger.Exchange.Print;

namespace Ledger.App.Commands.Print;

/// <summary>How labels are laid on their sheets.</summary>
internal sealed class LabelOptions
{
    private const int Most = 500;

    private readonly Option<int?> _copies = Typed.Option("--copies", "N", Text.Whole, "how many of each label; otherwise one");
    private readonly Option<int?> _skip = Typed.Option("--skip", "N", Text.Whole, "how many labels are gone from the first sheet already");

    public void AddTo(Command command)
    {
        command.Options.Add(_copies);
        command.Options.Add(_skip);
    }

    public IReadOnlyList<Label> Copies(IEnumerable<Label> labels, ParseResult parse)
    {
        var copies = parse.GetValue(_copies) ?? 1;
        var all = labels.SelectMany(label => Enumerable.Repeat(label, Math.Clamp(copies, 0, Most + 1))).Take(Most + 1).ToList();
        return copies is >= 1 and <= Most && all.Count <= Most ? all
            : throw new FormatException($"--copies {copies}: from 1 to {Most} labels are printed at once");
    }

    public LabelSheet On(LabelSheet sheet, ParseResult parse)
    {
        var used = parse.GetValue(_skip) ?? 0;
        return used >= 0 && used < sheet.PerSheet ? sheet with { Used = used }
            : throw new FormatException($"--skip {used}: a sheet has {sheet.PerSheet} labels; from 0 to {sheet.PerSheet - 1} can be gone");
    }
}
