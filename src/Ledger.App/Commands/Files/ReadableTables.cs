using Ledger.Exchange.Export;
using Ledger.Storage;

namespace Ledger.App.Commands.Files;

/// <summary>
/// The ledger's readable views as tables of an export, in a folder of their own, with a code book of their columns.
/// </summary>
internal static class ReadableTables
{
    /// <summary>The folder, inside that of the export.</summary>
    public const string Folder = "readable";

    /// <summary>The table that says what each column of the others means.</summary>
    public const string CodeBook = "code-book";

    /// <summary>The views, and what the ledger says of them.</summary>
    public static IEnumerable<ExportedTable> Of(LedgerFile ledger) =>
    [
        .. LedgerFile.ReadableViews.Select(view =>
            new ExportedTable(In(view), ledger.Columns(view), ledger.Rows(view))),
        new(
            In(CodeBook), ledger.Columns("read_me"),
            ledger.Rows("read_me").Where(row => LedgerFile.ReadableViews.Contains(row[0]))),
    ];

    private static string In(string name) => $"{Folder}/{name}";
}
