using System.Text.Json;
using Ledger.Storage;

namespace Ledger.App.Commands.Files;

/// <summary>What a backup did.</summary>
/// <param name="Ledger">The ledger.</param>
/// <param name="Backup">The copy.</param>
/// <param name="IsRestored">Whether the copy is the ledger now.</param>
/// <param name="Kept">Where what stood there is kept; null where nothing stood there, or nothing was replaced.</param>
internal sealed record BackedUp(string Ledger, string Backup, bool IsRestored, string? Kept);

/// <summary>backup: a copy of the ledger, or such a copy put in its place.</summary>
internal sealed class BackUpCommand : ExplainedCommand, IDescribed
{
    private readonly Workbench _bench;
    private readonly Argument<string> _copy = Typed.Argument("file", Text.NotEmpty,
        "the backup; - is the standard output, or with --restore the input");
    private readonly Option<bool> _restore = new("--restore")
    {
        Description = "put the backup in the ledger's place; the old file is kept beside it",
    };

    private readonly Told<BackedUp> _told = new(new Shape<BackedUp>()
        .Text("ledger", done => done.Ledger)
        .Text("backup", done => done.Backup)
        .Flag("isRestored", done => done.IsRestored)
        .Word("keptAs", done => done.Kept, "where what stood in the ledger's place is kept"));

    public BackUpCommand(Workbench bench)
        : base("backup", "Writes a consistent copy of the ledger while it is in use, or puts such a copy in its place.",
            """
                Examples: trayledger backup ledger-2026-03-15.db
                          trayledger backup --restore ledger-2026-03-15.db
                """)
    {
        _bench = bench;
        Arguments.Add(_copy);
        Options.Add(_restore);
        Options.Add(_told.Option);
        SetAction(parse => parse.GetValue(_restore) ? PutBack(parse) : MakeCopy(parse));
    }

    public void Describe(Utf8JsonWriter json) => _told.Describe(json);

    private int MakeCopy(ParseResult parse)
    {
        var name = parse.GetRequiredValue(_copy);
        _told.RequireOutput(parse, isTaken: Dash.Is(name));
        using var ledger = _bench.OpenToRead(parse);
        if (Dash.Is(name))
            return Dash.Out(_bench, path => ledger.BackUp(path));
        var copy = Path.GetFullPath(name);
        WholeFile.RequireNew(ledger.Path, copy, "a new file for the backup");
        ledger.BackUp(copy);
        _bench.Written = $"{ledger.Path} is backed up to {copy}";
        if (!_told.Write(parse, _bench.Around.Out, new(ledger.Path, copy, false, null)))
            _bench.Around.Out.WriteLine(_bench.Written);
        return ExitStatus.Done;
    }

    private int PutBack(ParseResult parse)
    {
        var name = parse.GetRequiredValue(_copy);
        return Dash.Is(name) ? Dash.In(_bench, path => PutBack(parse, path, "the standard input"))
            : PutBack(parse, Path.GetFullPath(name), null);
    }

    private int PutBack(ParseResult parse, string copy, string? called)
    {
        var path = _bench.PathIn(parse);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        var old = LedgerFile.Restore(copy, path, _bench.Around.Clock);
        _bench.Written = $"{called ?? copy} is the ledger {path} now";
        if (_told.Write(parse, _bench.Around.Out, new(path, called ?? copy, true, old.Length > 0 ? old : null)))
            return ExitStatus.Done;
        _bench.Around.Out.WriteLine(_bench.Written);
        if (old.Length > 0)
            _bench.Around.Out.WriteLine($"what stood there is kept as {old}");
        return ExitStatus.Done;
    }
}
