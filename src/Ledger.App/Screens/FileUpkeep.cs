using Ledger.App.Commands.Files;
using Ledger.Exchange.Import;
using Ledger.Storage;
using Ledger.Storage.Files;
using Ledger.Terminal;

namespace Ledger.App.Screens;

/// <summary>
/// Work on the ledger's file for the screens. Each piece of work opens the file for itself, so that it can run while
/// the screens read.
/// </summary>
internal sealed class FileUpkeep(string path, ZonedClock clock) : IUpkeep
{
    public IReadOnlyList<string> ImportKinds => CsvImport.Kinds;

    public UpkeepReport Check(IProgress<double> progress, CancellationToken cancel) => With(ledger =>
    {
        var report = ledger.Check(progress, cancel);
        var counted = $"{report.Counted(" and ")} were looked at";
        return report.Ok
            ? new(true, [$"{counted}: balances, references, dates and costs agree; nothing is wrong."])
            : new(false, [$"{counted}; the file is not in order:", .. report.Problems,
                Sentence(CheckCommand.Advice(report))]);
    });

    public UpkeepReport BackUp(string path) => With(ledger =>
    {
        WholeFile.RequireOther(ledger.Path, Full(path));
        ledger.BackUp(Full(path));
        return new(true, [$"The ledger is backed up to {Full(path)}.", "Keep a copy on another disk too."]);
    });

    public UpkeepReport Export(string folder, bool isReplacing, IProgress<double> progress, CancellationToken cancel) =>
        With(ledger =>
        {
            var tables = CsvExport.Write(ledger, Full(folder), isReplacing, progress, cancel);
            return new(true, [$"{tables} tables are exported to {Full(folder)}."]);
        });

    public UpkeepReport Import(string path, string? kind, bool isDry, IProgress<double> progress,
        CancellationToken cancel) => With(ledger =>
    {
        IBatch batch = kind is null ? FolderBatch.Read(Full(path), ledger)
            : CsvBatch.ReadFile(kind, Full(path), ledger);
        var posted = batch.Post(ledger, isDry, isAmending: false, progress, cancel);
        var dry = posted.IsDone && isDry ? ["Nothing was written: it was only tried."] : Array.Empty<string>();
        return new(posted.IsDone,
            [$"{posted.Result}.", .. dry, .. posted.Problems, .. posted.Remarks.Select(remark => $"Note: {remark}")]);
    });

    public UpkeepReport WriteCalendar(string path) => With(ledger =>
        new(true, [$"{CalendarWriting.Write(ledger, Full(path), clock.GetCurrentInstant()).Sentence}.",
            "Import it again whenever you like: what was moved is changed, nothing is doubled."]));

    private static string Sentence(string advice) => $"{char.ToUpperInvariant(advice[0])}{advice[1..]}.";

    /// <summary>The whole path; a tilde means the home folder here, where no shell has seen it first.</summary>
    private static string Full(string path) => Path.GetFullPath(
        path is "~" or ['~', '/', ..]
            ? Environment.GetFolderPath(Environment.SpecialFolder.UserProfile) + path[1..]
            : path);

    private UpkeepReport With(Func<LedgerFile, UpkeepReport> work)
    {
        try
        {
            using var ledger = LedgerFile.Open(path, clock);
            return work(ledger);
        }
        catch (Exception trouble)
        {
            return new(false, [trouble switch
            {
                OperationCanceledException => "Stopped; nothing is half done.",
                RefusedByCommandException or LedgerFileException => $"{trouble.Message}.",
                IOException or UnauthorizedAccessException => $"{FileTrouble.Sentence(trouble)}.",
                _ => $"{Trouble.Fault(trouble, "`trayledger check` tells how the file stands", isTraced: false)}.",
            }]);
        }
    }
}
