using Ledger.App.Wiring;
using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Import;
using Ledger.Storage;

namespace Ledger.App.Commands.Files;

/// <summary>Reads a CSV file, or all known files of a folder, into entries.</summary>
internal static class CsvSources
{
    public static CsvBatch ReadFile(string kind, string path, LedgerFile ledger)
    {
        using var csv = Open(path);
        return Read(kind, csv, path, ledger);
    }

    public static CsvBatch Read(string kind, Stream csv, string name, LedgerFile ledger)
    {
        var known = ledger.HoldingsOn(ledger.Today);
        var file = CsvImport.Read(kind, csv, known.Item, known.Formats, ledger.Today);
        return new(
            [.. file.Entries.Select(sourced => new Sourced($"{name}, line {sourced.Line}", sourced.Entry))],
            [.. file.Problems.Select(problem => $"{name}, {problem}")],
            file.Remarks);
    }

    public static CsvBatch ReadFolder(string folder, LedgerFile ledger)
    {
        if (!Directory.Exists(folder))
            throw new LedgerFileException($"there is no folder {Path.GetFullPath(folder)}");
        var (kinds, others) = Sort(folder);
        if (kinds.Count == 0)
            throw new RefusedByCommandException(
                $"{folder} holds no file to import; known names: {string.Join(", ", CsvImport.Kinds.Select(kind => $"{kind}.csv"))}");
        var open = new List<(string Kind, Stream Csv)>();
        try
        {
            foreach (var kind in kinds)
                open.Add((kind, Open(Path.Combine(folder, $"{kind}.csv"))));
            var known = ledger.HoldingsOn(ledger.Today);
            var files = ImportFolder.Read(open, known.Item, known.Formats, ledger.Today);
            return new(
                [.. ImportFolder.InOrder(files).Select(entry => new Sourced($"{entry.Kind}.csv, line {entry.Line}", entry.Entry))],
                [.. files.SelectMany(file => file.Problems.Select(problem => $"{file.Kind}.csv, {problem}"))],
                [.. files.SelectMany(file => file.Remarks.Select(remark => $"{file.Kind}.csv: {remark}")), .. others]);
        }
        finally
        {
            foreach (var (_, csv) in open)
                csv.Dispose();
        }
    }

    private static (IReadOnlyList<string> Kinds, IReadOnlyList<string> Others) Sort(string folder)
    {
        var names = Directory.EnumerateFiles(folder, "*.csv")
            .Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal).ToList();
        return (
            [.. names.Where(name => CsvImport.Kinds.Contains(name))],
            [.. names.Where(name => !CsvImport.Kinds.Contains(name))
                .Select(name => $"{name}.csv is no file that is imported and was left out")]);
    }

    private static FileStream Open(string path)
    {
        try
        {
            return new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw new LedgerFileException($"{path} cannot be read: {FileTrouble.Reason(trouble)}", trouble);
        }
    }
}

/// <summary>What was read from CSV, in the order in which it is posted.</summary>
/// <param name="Entries">The entries of the good rows.</param>
/// <param name="Problems">Every bad row, a sentence each.</param>
/// <param name="Remarks">What the user should know.</param>
internal sealed record CsvBatch(IReadOnlyList<Sourced> Entries, IReadOnlyList<string> Problems, IReadOnlyList<string> Remarks);

/// <summary>An entry and where it was read.</summary>
/// <param name="Where">The file and the line.</param>
/// <param name="Entry">The entry.</param>
internal sealed record Sourced(string Where, Entry Entry);
