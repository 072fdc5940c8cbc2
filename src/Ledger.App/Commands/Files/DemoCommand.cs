using Ledger.Exchange.Import;

namespace Ledger.App.Commands.Files;

/// <summary>demo: a ledger of an invented year, to look around in.</summary>
internal sealed class DemoCommand : ExplainedCommand
{
    private readonly Workbench _bench;
    private readonly Option<string?> _into = Typed.Option<string?>(
        "--into", "PATH", Text.FileName, "the new ledger's file; otherwise one in a new folder for temporary files");

    private readonly Option<bool> _noUi = new(
        "--no-ui") { Description = "make the ledger, and do not open the terminal screens" };

    private readonly Option<string?> _theme = TerminalStart.ThemeOption();

    public DemoCommand(Workbench bench)
        : base("demo", "Makes a ledger of an invented year that ends today, and opens it in the terminal screens.", """
            Your own ledger is not touched.
            Example: trayledger demo --into demo.db --no-ui
            """)
    {
        _bench = bench;
        Options.Add(_into);
        Options.Add(_noUi);
        Options.Add(_theme);
        SetAction(Run);
    }

    private int Run(ParseResult parse)
    {
        var path = Path.GetFullPath(parse.GetValue(_into) ?? parse.GetValue(_bench.File) ?? Fresh());
        if (File.Exists(path) || Directory.Exists(path))
            throw new RefusedByCommandException($"{path} exists already; the demo is made in a new file only");
        try
        {
            Make(path);
        }
        catch
        {
            // A demo that was not finished is of no use, and would stand in the way of the next one.
            foreach (var ending in new[] { "", "-wal", "-shm" })
                File.Delete(path + ending);
            throw;
        }

        return parse.GetValue(_noUi) ? ExitStatus.Done : TerminalStart.Open(_bench, path, parse.GetValue(_theme));
    }

    private void Make(string path)
    {
        using var ledger = _bench.Open(path);
        var entries = DemoYear.Read(ledger.Today);
        using var progress = new ProgressLine(_bench.Around, "recorded");
        var outcome = ledger.Import(entries, dryRun: false, new Counting(progress, entries.Count),
            _bench.Around.Interrupts());
        _bench.Written = outcome.Refused.Count == 0 ? $"the demo year stands in {path}" : null;
        progress.Clear();
        if (outcome.Refused.Count > 0)
            throw new InvalidOperationException($"the demo year was refused: {outcome.Refused[0].Refusal.Sentence}");
        _bench.Around.Out.WriteLine($"{path}: the demo year, {Counted.Of(outcome.Posted, "entry")}");
        _bench.Say($"look around with `trayledger --file {path}` or `trayledger --file {path} show today`");
    }

    private static string Fresh() => Path.Combine(Directory.CreateTempSubdirectory("trayledger-").FullName, "demo.db");
}
