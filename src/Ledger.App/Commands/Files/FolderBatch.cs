using Ledger.Exchange.Import;
using Ledger.Storage;
using Ledger.Storage.Files;

namespace Ledger.App.Commands.Files;

/// <summary>
/// What a folder holds to be imported: files of entries, or an export, whose journal says everything.
/// </summary>
internal static class FolderBatch
{
    /// <summary>A table of the ledger itself that every export has.</summary>
    private const string Entries = "entry";

    /// <summary>Reads the folder.</summary>
    /// <exception cref="LedgerFileException">There is no such folder, or a file in it cannot be read.</exception>
    /// <exception cref="RefusedByCommandException">Nothing in it can be imported, or it is not clear what is
    /// meant.</exception>
    public static IBatch Read(string folder, LedgerFile ledger)
    {
        if (!Directory.Exists(folder))
            throw new LedgerFileException($"there is no folder {Path.GetFullPath(folder)}");
        var names = Directory.EnumerateFiles(folder, "*.csv").Select(file => Path.GetFileNameWithoutExtension(file))
            .Order(StringComparer.Ordinal).ToList();
        if (names.Contains(ReadableTables.CodeBook))
            throw new RefusedByCommandException(
                $"{folder} holds the readable tables of an export, which are for people; name the export's own folder, "
                    + "the one above it");
        var journal = Path.Combine(folder, CsvExport.Journal);
        if (names.Contains(Entries) || File.Exists(journal))
            return ReadExport(folder, journal, names, ledger);
        var known = names.ToLookup(CsvImport.Kinds.Contains);
        return known[true].Any() ? CsvBatch.ReadFiles(folder, known[true], known[false], ledger)
            : throw new RefusedByCommandException(
                $"{folder} holds no file to import; known names: "
                    + $"{string.Join(", ", CsvImport.Kinds.Select(kind => $"{kind}.csv"))}");
    }

    /// <summary>
    /// Some tables of the ledger are called as the files of a kind of entry are (order_terms.csv); in an export they
    /// are tables.
    /// </summary>
    private static JournalBatch ReadExport(string folder, string journal, IEnumerable<string> names, LedgerFile ledger)
    {
        if (!File.Exists(journal))
            throw new RefusedByCommandException(
                $"{folder} holds the tables of an export without its {CsvExport.Journal}, the one file of an export "
                    + "that an import reads");
        if (names.Intersect(CsvImport.Kinds).Except(ledger.Tables).FirstOrDefault() is { } own)
            throw new RefusedByCommandException(
                $"{folder} holds an export and {own}.csv too; put one of them into another folder, or name the file: "
                + $"`trayledger import journal {journal}`, `trayledger import {own} {Path.Combine(folder, own)}.csv`");
        return new(File.ReadLines(journal),
            [$"{folder} is an export: its {CsvExport.Journal} holds all that was said, and is what was read"]);
    }
}
