using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Storage;

namespace Ledger.App.Commands.Files;

/// <summary>backup: a copy of the ledger, or such a copy put in its place.</summary>
internal sealed class BackUpCommand : ExplainedCommand
{
    private readonly Workbench _bench;
    private readonly Argument<string> _copy = Typed.Argument("file", Text.NotEmpty, "the backup");
    private readonly Option<bool> _restore = new("--restore")
    {
        Description = "put the backup in the ledger's place; the old file is kept beside it",
    };

    public BackUpCommand(Workbench bench)
        : base("backup", "Writes a consistent copy of the ledger while it is in use, or puts such a copy in its place.", """
            Examples: trayledger backup ledger-2026-03-15.db
                      trayledger backup --restore ledger-2026-03-15.db
            """)
    {
        _bench = bench;
        Arguments.Add(_copy);
        Options.Add(_restore);
        SetAction(parse => parse.GetValue(_restore) ? PutBack(parse) : MakeCopy(parse));
    }

    private int MakeCopy(ParseResult parse)
    {
        var copy = Path.GetFullPath(parse.GetRequiredValue(_copy));
        using var ledger = _bench.OpenToRead(parse);
        WholeFile.RequireOther(ledger.Path, copy);
        ledger.BackUp(copy);
        _bench.Written = $"{ledger.Path} is backed up to {copy}";
        _bench.Around.Out.WriteLine(_bench.Written);
        return ExitStatus.Done;
    }

    private int PutBack(ParseResult parse)
    {
        var copy = Path.GetFullPath(parse.GetRequiredValue(_copy));
        var path = _bench.PathIn(parse);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        var old = LedgerFile.Restore(copy, path, _bench.Around.Clock);
        _bench.Written = $"{copy} is the ledger {path} now";
        _bench.Around.Out.WriteLine(_bench.Written);
        if (old.Length > 0)
            _bench.Around.Out.WriteLine($"what stood there is kept as {old}");
        return ExitStatus.Done;
    }
}
