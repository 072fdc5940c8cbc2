using System.Text.Json;
using Ledger.Storage;

namespace Ledger.App.Commands.Files;

/// <summary>check: proves the file.</summary>
internal sealed class CheckCommand : ExplainedCommand, IDescribed
{
    private static readonly Shape<(CheckReport Report, IReadOnlyList<string> Mended)> _shape =
        new Shape<(CheckReport Report, IReadOnlyList<string> Mended)>()
            .Flag("ok", done => done.Report.Ok)
            .Whole("entries", done => done.Report.Entries)
            .Whole("movements", done => done.Report.Movements)
            .Texts("problems", done => done.Report.Problems)
            .Texts("remarks", done => done.Report.Remarks)
            .Texts("mendable", done => done.Report.Mendable, "problems that --mend puts right")
            .Texts("mended", done => done.Mended);

    private readonly Told<(CheckReport Report, IReadOnlyList<string> Mended)> _told = new(_shape);
    private readonly Workbench _bench;
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
        Options.Add(_told.Option);
        SetAction(Run);
    }

    public void Describe(Utf8JsonWriter json) => _told.Describe(json);

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
        if (!_told.Write(parse, _bench.Around.Out, (report, mended)))
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
        ? "all of it follows from what was recorded, which is whole: `trayledger check --mend` derives it again, after "
            + "making a copy"
        : report.Mendable.Count > 0
            ? "what was recorded is not in order: record nothing more in it, and put back a backup from before with "
                + "`trayledger backup --restore FILE`; `trayledger check --mend` mends only what follows from it"
            : "record nothing more in it; put back a backup from before with `trayledger backup --restore FILE`";
}
