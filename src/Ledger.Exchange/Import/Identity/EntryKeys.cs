using System.Text;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Identity;

/// <summary>
/// The identities of a file's entries: the user's reference; else a name that is given once; else what the entry says,
/// value by value as the program writes it. So a row is the same however it is written (186.5 and 186.50, pan100 and
/// PAN100, 0 where nothing stood), whatever separates the fields, in whatever order its columns stand, with whatever
/// columns were added to its kind since.
/// </summary>
/// <param name="kind">The kind of the entries.</param>
internal sealed class EntryKeys(EntryKind kind)
{
    private readonly Dictionary<string, int> _lines = [];
    private readonly ContentHash _said = new(), _asWritten = new();
    private readonly List<(FormerFile File, ContentHash Hash)> _former =
        [.. FormerFile.Of(kind.File).Select(file => (file, new ContentHash()))];

    /// <summary>The identity of an entry, and those that it had by files of earlier versions.</summary>
    /// <param name="group">Its rows. A reference that other rows have already is refused there.</param>
    /// <param name="text">What they say, as it stands there.</param>
    /// <param name="written">The same as the program writes it.</param>
    public (string Key, IReadOnlyList<string> Former) Of(RowGroup group, EntryText text, EntryText written)
    {
        if (text[CommonFields.Reference] is { Length: > 0 } reference)
        {
            if (!_lines.TryAdd(reference, group.Line))
                group.FirstSaying(CommonFields.Reference.Name).Refuse(
                    CommonFields.Reference.Name,
                    $"accepted is a reference of its own for each entry; line {_lines[reference]} has this one");
            var own = $"{kind.File}:{reference}";
            return (own, [.. _former.Select(former => $"{former.File.Name}:{reference}").Where(key => key != own)]);
        }

        var name = kind.NamedBy is { } named ? text[named] : "";
        string[] former =
            [.. _former.Select(
                former => $"{former.File.Name}:{name}#{former.Hash.Of(former.File.Content(group.Rows))}")];
        return name.Length > 0 && !kind.IsReplaceable
            ? ($"{kind.File}:{name}", former)
            : ($"{kind.File}:{name}#{_said.Of(Content(text, written, Alike))}",
                [$"{kind.File}:{name}#{_asWritten.Of(Content(text, written, (_, value) => value))}", .. former]);
    }

    /// <summary>
    /// What an entry says; an answer to what was asked about is no part of it, and the day of a definition only where
    /// its row names one.
    /// </summary>
    private string Content(EntryText text, EntryText written, Func<Field, string, string> alike)
    {
        var content = new StringBuilder();
        Append(content, kind.AllFields.Where(IsSaid), written, alike);
        foreach (var line in written.Lines)
            Append(content.Append('\u001e'), kind.Line!.Fields, line, alike);
        return content.ToString();

        bool IsSaid(Field field) => field != CommonFields.Anyway && field != CommonFields.Before
            && (field != CommonFields.Date || text[field].Length > 0);
    }

    /// <summary>
    /// Values that are one to a spreadsheet: letters of either case, and 0 where nothing need be said.
    /// </summary>
    private static string Alike(Field field, string value) =>
        !field.IsNeeded && field.Notation.Shape == Shape.Number
            && (value == "0" || value.StartsWith("0 ", StringComparison.Ordinal))
            ? "" : value.ToUpperInvariant();

    private static void Append(StringBuilder content, IEnumerable<Field> fields, EntryText written,
        Func<Field, string, string> alike)
    {
        foreach (var field in fields)
            if (alike(field, written[field]) is { Length: > 0 } value)
                content.Append(field.Name).Append('=').Append(value).Append('\u001f');
    }
}
