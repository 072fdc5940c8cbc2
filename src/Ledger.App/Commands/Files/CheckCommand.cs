using System.CommandLine;
using Ledger.App.Output;
using Ledger.App.Wiring;
using Ledger.Storage;

namespace Ledger.App.Commands.Files;

/// <summary>check: proves the file.</summary>
internal sealed class CheckCommand : ExplainedCommand
{
    private readonly Workbench _bench;
    private readonly Option<bool> _json = new("--json") { Description = "one JSON document instead of text" };

    public CheckCommand(Workbench bench)
        : base("check", "Proves the file: balances, references, dates, and that all cost is accounted for.", """
            Ends with status 4 when something is wrong.
            """)
    {
        _bench = bench;
        Options.Add(_json);
        SetAction(Run);
    }

    private int Run(ParseResult parse)
    {
        using var ledger = _bench.OpenToRead(parse);
        using var progress = new ProgressLine(_bench.Around, "checked");
        var report = ledger.Check(progress, _bench.Around.Interrupts());
        progress.Clear();
        if (parse.GetValue(_json))
            WriteJson(report);
        else
            WriteText(report, ledger.Path);
        return report.Ok ? ExitStatus.Done : ExitStatus.UnusableFile;
    }

    private void WriteText(CheckReport report, string path)
    {
        foreach (var problem in report.Problems)
            _bench.Around.Out.WriteLine(problem);
        _bench.Around.Out.WriteLine(
            $"{path}: {report.Counted(", ")}; {(report.Ok ? "nothing is wrong" : "it is not in order")}");
        if (!report.Ok)
            _bench.Say("record nothing more in it; put back a backup from before with `trayledger backup --restore FILE`");
    }

    private void WriteJson(CheckReport report) => JsonText.Write(_bench.Around.Out, json =>
    {
        json.WriteBoolean("ok", report.Ok);
        json.WriteNumber("entries", report.Entries);
        json.WriteNumber("movements", report.Movements);
        json.WriteStartArray("problems");
        foreach (var problem in report.Problems)
            json.WriteStringValue(problem);
        json.WriteEndArray();
    });
}
