using Ledger.Core.Journal.Kinds;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>The file of a kind of entry, made from its description: a column for each field; the lines of an entry are rows of one name.</summary>
/// <param name="kind">The kind.</param>
internal sealed class KindFile(EntryKind kind) : FileKind(kind.File, Needed(kind), Optional(kind))
{
    private readonly HashSet<string> _lineColumns = [.. kind.Line?.Fields.Select(field => field.Name) ?? []];

    public override bool IsUndated => !kind.IsDated;

    public override IEnumerable<SourcedEntry> Entries(IEnumerable<Row> rows, ImportTerms terms)
    {
        var keys = new RowKeys(Name, Columns);
        var reading = terms.ForReading();
        foreach (var group in Groups(rows))
        {
            var text = new EntryText();
            foreach (var field in kind.AllFields.Where(field => !_lineColumns.Contains(field.Name)))
                text[field] = group.Saying(field.Name).Text(field.Name);
            if (kind.Line is { } line)
                foreach (var row in group.Rows.Where(row => line.IsNeeded || line.Fields.Any(field => row.Text(field.Name).Length > 0)))
                    text.Lines.Add(Line(line, row));
            if (group.IsGood && Read(text, group, keys, reading) is { } entry)
                yield return new(group.Line, entry);
        }
    }

    private Core.Journal.Entries.Entry? Read(EntryText text, RowGroup group, RowKeys keys, ReadingTerms terms)
    {
        text.Key = kind.NamedBy is { } named ? keys.Of(text[named], group.Rows)
            : kind.Line is null ? keys.Of(group.Rows[0]) : keys.Of(group.Rows);
        var reading = EntryReading.Read(kind, text, terms);
        foreach (var problem in reading.Problems)
            group.Rows[Math.Max(problem.Line - 1, 0)].Refuse(problem.Field?.Name ?? "", $"accepted is {problem.Accepted}");
        return reading.Entry;
    }

    /// <summary>Rows that belong together: those of one name or one reference. A row with neither is an entry of its own.</summary>
    private IEnumerable<RowGroup> Groups(IEnumerable<Row> rows) => (kind.NamedBy, kind.Line) switch
    {
        ({ } named, not null) => RowGroup.By(named.Name, rows),
        (null, not null) => RowGroup.ByReference(rows),
        _ => rows.Select(row => new RowGroup("", [row])),
    };

    private static EntryText Line(LineKind line, Row row)
    {
        var text = new EntryText();
        foreach (var field in line.Fields)
            text[field] = row.Text(field.Name);
        return text;
    }

    private static string[] Needed(EntryKind kind) =>
        [.. ColumnsOf(kind).Where(field => field.IsNeeded || (field == CommonFields.Date && kind.IsDated)).Select(field => field.Name).Distinct()];

    private static string[] Optional(EntryKind kind) => [.. ColumnsOf(kind).Select(field => field.Name).Distinct().Except(Needed(kind))];

    private static IEnumerable<Field> ColumnsOf(EntryKind kind) =>
        [CommonFields.Date, .. kind.Fields, .. kind.Line?.Fields ?? [], CommonFields.Note, CommonFields.Reference];
}
