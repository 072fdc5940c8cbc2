using Ledger.Storage;
using Ledger.Storage.Files;

namespace Ledger.App.Wiring;

/// <summary>What every command works with: its surroundings and the ledger that the command line means.</summary>
internal sealed class Workbench(Surroundings around)
{
    /// <summary>The command line; null where there is none and the whole tree of commands is wanted.</summary>
    public IReadOnlyList<string>? Line { get; init; }

    /// <summary>The streams, the clock, the terminal.</summary>
    public Surroundings Around => around;

    /// <summary>
    /// What the command has written for good so far, as a sentence: said when something goes wrong after that. Null
    /// while it has written nothing.
    /// </summary>
    public string? Written { get; set; }

    /// <summary>--file, which every command accepts.</summary>
    public Option<string?> File { get; } = FileOption();

    /// <summary>Today, where the user is.</summary>
    public LocalDate Today => around.Clock.GetCurrentDate();

    /// <summary>The path of the ledger that the command line means.</summary>
    public string PathIn(ParseResult parse) => LedgerLocation.Of(parse.GetValue(File), around.Variable);

    /// <summary>Opens the ledger that the command line means.</summary>
    public LedgerFile Open(ParseResult parse) => Open(PathIn(parse));

    /// <summary>
    /// Opens the ledger for a command that only reads: one that was named must be there already, since a mistyped name
    /// holds nothing.
    /// </summary>
    /// <exception cref="LedgerFileException">There is none under the name, or it cannot be used.</exception>
    public LedgerFile OpenToRead(ParseResult parse)
    {
        var path = PathIn(parse);
        if (LedgerLocation.IsNamed(parse.GetValue(File), around.Variable) && !Path.Exists(path))
            throw new LedgerFileException($"there is no ledger at {path} yet");
        return Open(path);
    }

    /// <summary>Opens a ledger, and says so when an older one was brought up to date.</summary>
    public LedgerFile Open(string path)
    {
        var ledger = LedgerFile.Open(path, around.Clock);
        if (ledger.MigratedFrom is { } copy)
            Say($"{path} was made by an older version and is up to date now; the file as it was is kept as {copy}");
        return ledger;
    }

    /// <summary>
    /// Looks something up for completion: nothing is made, brought up to date or said, and what cannot be read offers
    /// nothing.
    /// </summary>
    public IReadOnlyList<string> Glance(ParseResult parse, Func<ILedger, Holdings, IReadOnlyList<string>> read)
    {
        try
        {
            using var ledger = LedgerFile.OpenAsItIs(PathIn(parse), around.Clock);
            return ledger is null ? [] : ledger.Read(() => read(ledger, ledger.HoldingsOn(ledger.Today)));
        }
        catch (Exception trouble) when (trouble is LedgerFileException or IOException or UnauthorizedAccessException
            or FormatException)
        {
            return [];
        }
    }

    /// <summary>Writes a message or remark for the person, apart from the results.</summary>
    public void Say(string sentence) => around.Error.WriteLine(sentence);

    private static Option<string?> FileOption()
    {
        var option = Typed.Option<string?>(
            "--file", "PATH", Text.FileName,
            $"the ledger's file; otherwise the variable {LedgerLocation.Variable}, otherwise trayledger/ledger.db in "
                + "your data folder");
        option.Recursive = true;
        return option;
    }
}
