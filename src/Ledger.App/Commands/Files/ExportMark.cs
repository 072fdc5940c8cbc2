using System.Text;

namespace Ledger.App.Commands.Files;

/// <summary>
/// Stands in an export's folder while its files are put in place one after the other, and so for good where that was
/// broken off: the files there are whole, but may be of two exports. The next export puts all of them in place and
/// takes it away.
/// </summary>
internal sealed class ExportMark(string folder, string ledger)
{
    private const string Text =
        "This export was broken off while its files were put in place: some of them are new, others may be of an "
            + "earlier export.\nExport into this folder again to have all of them of one moment.\n";

    /// <summary>Whether an export into the folder was broken off, so that the files there are its own.</summary>
    public bool IsThere => File.Exists(FilePath);

    private string FilePath => Path.Combine(folder, "trayledger-export-unfinished.txt");

    /// <summary>Puts it there.</summary>
    public void Put() => WholeFile.Write(ledger, FilePath, file => file.Write(Encoding.UTF8.GetBytes(Text)));

    /// <summary>Takes it away: all files are in place.</summary>
    public void TakeAway() => File.Delete(FilePath);
}
