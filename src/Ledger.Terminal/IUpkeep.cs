namespace Ledger.Terminal;

/// <summary>
/// Work on the whole file. It may take a while: it tells how far it is, can be stopped, and leaves nothing half done.
/// It may run beside the reading and writing of the ledger.
/// </summary>
public interface IUpkeep
{
    /// <summary>The kinds of CSV file that are imported one by one.</summary>
    IReadOnlyList<string> ImportKinds { get; }

    /// <summary>Proves the file: balances, references, dates, and that all cost is accounted for.</summary>
    UpkeepReport Check(IProgress<double> progress, CancellationToken cancel);

    /// <summary>Makes a consistent copy of the ledger.</summary>
    /// <param name="path">The copy; a file that is there already is not touched, and the report says so.</param>
    UpkeepReport BackUp(string path);

    /// <summary>Writes every table as a CSV file.</summary>
    /// <param name="folder">The folder; it is made if it is not there.</param>
    /// <param name="isReplacing">Whether the files of an earlier export are replaced.</param>
    /// <param name="progress">How far it is, from 0 to 1.</param>
    /// <param name="cancel">Stops it.</param>
    UpkeepReport Export(string folder, bool isReplacing, IProgress<double> progress, CancellationToken cancel);

    /// <summary>Records what a CSV file holds, or all known files of a folder: everything or nothing.</summary>
    /// <param name="path">The file or folder.</param>
    /// <param name="kind">One of <see cref="ImportKinds"/>; null for a folder.</param>
    /// <param name="isDry">Whether it only tells what would happen.</param>
    /// <param name="progress">How far it is, from 0 to 1.</param>
    /// <param name="cancel">Stops it.</param>
    UpkeepReport Import(string path, string? kind, bool isDry, IProgress<double> progress, CancellationToken cancel);

    /// <summary>Writes the days to be reminded of as iCalendar; a file of that name is replaced.</summary>
    UpkeepReport WriteCalendar(string path);
}

/// <summary>What came of work on the file.</summary>
/// <param name="IsDone">Whether it was done; if not, nothing was written.</param>
/// <param name="Sentences">What was done or found, or why nothing was.</param>
public sealed record UpkeepReport(bool IsDone, IReadOnlyList<string> Sentences);
