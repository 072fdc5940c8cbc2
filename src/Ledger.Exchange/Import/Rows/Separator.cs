namespace Ledger.Exchange.Import.Rows;

/// <summary>
/// Finds what separates the fields of a file: the mark that makes the most of its header's names known ones.
/// </summary>
internal static class Separator
{
    private static readonly char[] Marks = [',', ';', '\t'];

    public static char In(string header, IReadOnlyCollection<string> columns) =>
        Marks.MaxBy(mark => Known(header, mark, columns));

    private static int Known(string header, char mark, IReadOnlyCollection<string> columns) =>
        header.Split(mark).Count(name => columns.Contains(Header.Plain(name.Trim().Trim('"'))));
}
