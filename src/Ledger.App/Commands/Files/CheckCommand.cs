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
    private readonly Option<bool> _mend = new("--mend")
    {
        Description = "derive again what follows from what was recorded and is wrong, after making a copy",
    };


    public CheckCommand(Workbench bench)
        : base("check", "Proves the file: balances, references, dates, and that all cost is accounted for.", """
            Ends with status 4 when something is wrong. What is kept only to be read quickly
            (balances, totals) and what guards the file follows from what was recorded;
            --mend derives it again and never changes what was recorded.
            Example: trayledger check
            """)
    {
        _bench = bench;
        Options.Add(_mend);
        Options.Add(_json);
        SetAction(Run);
    }

    private int Run(ParseResult parse)
    {
        using var ledger = _bench.OpenToRead(parse);
        using var progress = new ProgressLine(_bench.Around, "checked");
        var (copy, mended, report) = parse.GetValue(_mend)
            ? ledger.Mend(progress, _bench.Around.Interrupts())
            : new(null, [], ledger.Check(progress, _bench.Around.Interrupts()));
        progress.Clear();
        if (copy is not null)
            _bench.Say($"the file as it was is kept as {copy}");
        if (parse.GetValue(_json))
            WriteJson(report, mended);
        else
            WriteText(report, mended, ledger.Path);
        return report.Ok ? ExitStatus.Done : ExitStatus.UnusableFile;
    }

    private void WriteText(CheckReport report, IReadOnlyList<string> mended, string path)
    {
        foreach (var problem in mended)
            _bench.Around.Out.WriteLine($"mended: {problem}");
        foreach (var problem in report.Problems)
            _bench.Around.Out.WriteLine(problem);
        foreach (var remark in report.Remarks)
            _bench.Around.Out.WriteLine($"remark: {remark}");
        _bench.Around.Out.WriteLine(
            $"{path}: {report.Counted(", ")}; {(report.Ok ? "nothing is wrong" : "it is not in order")}");
        if (!report.Ok)
            _bench.Say(Advice(report));
    }

    /// <summary>What to do about what a check found.</summary>
    public static string Advice(CheckReport report) => report.Mendable.Count == report.Problems.Count
        ? "all of it follows from what was recorded, which is whole: `trayledger check --mend` derives it again, after making a copy"
        : report.Mendable.Count > 0
            ? "what was recorded is not in order: record nothing more in it, and put back a backup from before with "
                + "`trayledger backup --restore FILE`; `trayledger check --mend` mends only what follows from it"
            : "record nothing more in it; put back a backup from before with `trayledger backup --restore FILE`";

    private void WriteJson(CheckReport report, IReadOnlyList<string> mended) => JsonText.Write(_bench.Around.Out, json =>
    {
        json.WriteBoolean("ok", report.Ok);
        json.WriteNumber("entries", report.Entries);
        json.WriteNumber("movements", report.Movements);
        json.WriteStartArray("problems");
        foreach (var problem in report.Problems)
            json.WriteStringValue(problem);
        json.WriteEndArray();
        json.WriteStartArray("remarks");
        foreach (var remark in report.Remarks)
            json.WriteStringValue(remark);
        json.WriteEndArray();
        json.WriteStartArray("mendable");
        foreach (var problem in report.Mendable)
            json.WriteStringValue(problem);
        json.WriteEndArray();
        json.WriteStartArray("mended");
        foreach (var problem in mended)
            json.WriteStringValue(problem);
        json.WriteEndArray();
    });
}
