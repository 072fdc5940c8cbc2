using Ledger.Exchange.Import.Identity;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import;

/// <summary>
/// The file of a kind of entry, made from its description: a column for each field; the lines of an entry are rows that
/// share its name, or its reference. What the whole entry says stands in one of its rows at least.
/// </summary>
internal sealed class KindFile
{
    /// <summary>
    /// What stands in a cell that says nothing on purpose: what an earlier import read there is to go.
    /// </summary>
    public const string Nothing = "-";

    private readonly EntryKind _kind;
    private readonly Dictionary<string, Field> _fields;

    private KindFile(EntryKind kind)
    {
        _kind = kind;
        var lineFields = kind.Line?.Fields ?? [];
        _fields = new Field[] { CommonFields.Date }.Concat(kind.Fields).Concat(lineFields)
            .Concat(kind.Common).ToDictionary(ColumnOf);
        NeededColumns = [.. _fields.Where(column => IsNeeded(column.Value)).Select(column => column.Key)];
        Columns = [.. NeededColumns, .. _fields.Keys.Except(NeededColumns)];
    }

    /// <summary>All files, in the order in which entries of the same day are posted.</summary>
    public static IReadOnlyList<KindFile> All { get; } = [.. EntryKinds.All.Select(kind => new KindFile(kind))];

    public string Name => _kind.File;

    public IReadOnlyList<string> NeededColumns { get; }

    /// <summary>All columns, those that must be there first.</summary>
    public IReadOnlyList<string> Columns { get; }

    /// <summary>What its rows record, in a sentence.</summary>
    public string Purpose => _kind.Purpose;

    /// <summary>All columns with what stands in them, those that must be there first.</summary>
    public IEnumerable<CsvColumn> Described => Columns.Select(column => new CsvColumn(
        column, _fields[column].Help, _fields[column].Example, NeededColumns.Contains(column)));

    /// <summary>
    /// A definition that names no day stands on the earliest of all; whatever else happens, happens on a day.
    /// </summary>
    private bool NeedsDay => _kind.IsDated || !_kind.IsReplaceable;

    /// <summary>What may stand in a column, for a template.</summary>
    public string ExampleOf(string column) => _fields[column].Example;

    /// <summary>The entries that the rows make. Rows that cannot be read make none and say why.</summary>
    public IEnumerable<SourcedEntry> Entries(IEnumerable<Row> rows, ReadingTerms terms, string source, char mark)
    {
        Row[] all = [.. rows];
        var speech = FileSpeech.Of(mark, _fields, column => all.Select(row => row.Cell(column))
            .Where(cell => cell.Length > 0 && cell != Nothing));
        foreach (var row in all)
            row.Speech = speech;
        var keys = new EntryKeys(_kind);
        foreach (var group in Groups(all))
            if (Read(group, keys, terms) is { } entry)
                yield return new(source, group.Line, entry, HasDay: group.Saying(CommonFields.Date.Name).Length > 0);
    }

    private Entry? Read(RowGroup group, EntryKeys keys, ReadingTerms terms)
    {
        var lines = group.Rows.Where(HasLine).ToList();
        var text = Text(group, lines);
        var denied = IsKnownByName(text) ? Denied(text).ToArray() : [];
        // Dates are read as they stand in the file first: moving a file in time leaves the identity of its rows as it
        // is.
        var unmoved = terms with { Shift = ReadingTerms.Unmoved };
        var reading = EntryReading.Read(_kind, text, unmoved);
        foreach (var problem in reading.Problems)
            Refuse(problem, group, lines);
        if (NeedsDay && text[CommonFields.Date].Length == 0)
            group.Rows[0].Refuse(CommonFields.Date.Name,
                $"accepted is {Notations.Date.Read("", new(), unmoved).Accepted}");
        if (!group.IsGood || reading.Entry is not { } read)
            return null;
        var (key, former) = keys.Of(group, text, EntryWriting.Write(_kind, read, unmoved));
        if (!group.IsGood)
            return null;
        var entry = terms.Shift == ReadingTerms.Unmoved ? read : EntryReading.Read(_kind, text, terms).Entry!;
        return entry with { Key = key, FormerKeys = former, Denies = denied };
    }

    /// <summary>
    /// Whether its rows are known by a name when they are imported again, and not by what they say: only then is there
    /// something to deny.
    /// </summary>
    private bool IsKnownByName(EntryText text) => text[CommonFields.Reference].Length > 0
        || (_kind.NamedBy is { } named && !_kind.IsReplaceable && text[named].Length > 0);

    /// <summary>The places in which nothing is said on purpose; they are emptied.</summary>
    private IEnumerable<FieldChange> Denied(EntryText text)
    {
        var ofAll = _kind.AllFields.Where(field => field != CommonFields.Reference && field != _kind.NamedBy);
        var places = ofAll.Select(field => (Line: 0, Text: text, Field: field)).Concat(
            text.Lines.SelectMany((line,
                i) => _kind.Line!.Fields.Select(field => (Line: i + 1, Text: line, Field: field))));
        foreach (var (line, within, field) in places.Where(place => place.Text[place.Field] == Nothing))
        {
            within[field] = "";
            yield return new(line, field.Name, "");
        }
    }

    private EntryText Text(RowGroup group, List<Row> lines)
    {
        var text = new EntryText();
        foreach (var field in _kind.AllFields)
            text[field] = group.Agreed(ColumnOf(field));
        foreach (var row in lines)
        {
            var line = new EntryText();
            foreach (var field in _kind.Line!.Fields)
                line[field] = row.Text(field.Name);
            text.Lines.Add(line);
        }

        return text;
    }

    private bool HasLine(Row row) =>
        _kind.Line is { } line && (line.IsNeeded || line.Fields.Any(field => row.Text(field.Name).Length > 0));

    private void Refuse(FieldProblem problem, RowGroup group, List<Row> lines)
    {
        var column = problem.Field is { } field ? ColumnOf(field) : "";
        var row = problem.Field is { } one && IsOfLine(one)
            ? lines[Math.Max(problem.Line - 1, 0)]
            : group.FirstSaying(column);
        row.Refuse(column, $"accepted is {problem.Accepted}");
    }

    /// <summary>
    /// Rows that belong together: those of one name or one reference. A row with neither is an entry of its own.
    /// </summary>
    private IEnumerable<RowGroup> Groups(IEnumerable<Row> rows) => _kind.Line is null
        ? rows.Select(row => new RowGroup("", [row]))
        : RowGroup.By((_kind.NamedBy ?? CommonFields.Reference).Name, rows);

    /// <summary>
    /// A field's column: its name; where a line has a field of that name too, the name of what the whole entry is
    /// stands before it.
    /// </summary>
    private string ColumnOf(Field field) =>
        !IsOfLine(field) && _kind.Line?.Fields.Any(one => one.Name == field.Name) == true
            ? $"{_kind.NamedBy?.Name ?? _kind.Name.Replace('-', '_')}_{field.Name}" : field.Name;

    private bool IsOfLine(Field field) => _kind.Line?.Fields.Contains(field) == true;

    private bool IsNeeded(Field field) => field == CommonFields.Date ? NeedsDay
        : field.IsNeeded && (!IsOfLine(field) || _kind.Line!.IsNeeded);
}
