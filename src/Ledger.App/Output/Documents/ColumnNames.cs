using System.Text.RegularExpressions;

namespace Ledger.App.Output.Documents;

/// <summary>Columns as they are named in files, read by people, and typed.</summary>
internal static partial class ColumnNames
{
    /// <summary>As people read it: goodUntil is "good until".</summary>
    public static string Title(string name) => Humps().Replace(name, " $0").Replace('.', ' ').ToLowerInvariant();

    /// <summary>The position of the column that is meant, in any case, in one word or several.</summary>
    /// <exception cref="FormatException">There is none of that name.</exception>
    public static int Find(IReadOnlyList<TableColumn> columns, string written, string option)
    {
        for (var i = 0; i < columns.Count; i++)
            if (Plain(columns[i].Name) == Plain(written))
                return i;
        var names = columns.Select(column => column.Name).ToList();
        throw new FormatException(
            $"{option}: there is no column \"{written}\"; {Spelling.Meant(written, names)}the columns are "
                + $"{string.Join(", ", names)}");
    }

    private static string Plain(string name) =>
        string.Concat(name.Where(sign => !char.IsWhiteSpace(sign) && sign is not ('-' or '_' or '.')))
            .ToUpperInvariant();

    [GeneratedRegex("(?<=[a-z0-9])[A-Z]")]
    private static partial Regex Humps();
}
