namespace Ledger.App.Output.Documents;

/// <summary>How a document is written.</summary>
internal enum DocumentFormat
{
    /// <summary>For people.</summary>
    Text,

    /// <summary>A table, comma-separated.</summary>
    Csv,

    /// <summary>A table, tab-separated.</summary>
    Tsv,

    /// <summary>All of it.</summary>
    Json,
}

/// <summary>
/// The options that follow from the tables of a document: how it is written, which table, which rows and in which
/// order.
/// </summary>
internal sealed class RowOptions
{
    private static readonly string[] _formats = ["text", "csv", "tsv", "json"];

    private readonly IReadOnlyList<(string Name, IReadOnlyList<TableColumn> Columns)> _tables;
    private readonly Option<bool> _json = new("--json") { Description = "one JSON document instead of text" };
    private readonly Option<DocumentFormat?> _format = Typed.Choice<DocumentFormat>(
        "--format", "FORMAT", _formats, "format", "text; csv or tsv, one table for other programs; or json, all of it");

    private readonly Option<string?> _table = Typed.Option<string?>(
        "--table", "NAME", Text.NotEmpty, "which table, otherwise the first; as text that table alone");


    private readonly Option<string?> _sort = Typed.Option<string?>("--sort", "COLUMN", Text.NotEmpty,
        "the rows in the order of that column");
    private readonly Option<bool> _reverse = new("--reverse") { Description = "the last row first" };
    private readonly Option<string[]> _where = Typed.Options(
        "--where", "COLUMN~TEXT", Condition, "only rows with that text in that column; may be given several times");

    private readonly Option<LocalDate?>? _from, _to;
    private readonly List<(Option<string?> Option, string Column)> _exact = [];

    /// <param name="tables">The tables, the first being the one that is meant where none is named.</param>
    /// <param name="own">Options that the command has itself.</param>
    public RowOptions(IReadOnlyList<(string Name, IReadOnlyList<TableColumn> Columns)> tables,
        IReadOnlyCollection<string> own)
    {
        _tables = tables;
        All = [_format, _json];
        if (tables.Count == 0)
            return;
        var columns = tables[0].Columns;
        _table.CompletionSources.Add([.. tables.Select(table => table.Name)]);
        _sort.CompletionSources.Add(context => Columns(context.ParseResult)
            .Select(column => new System.CommandLine.Completions.CompletionItem(column.Name)));
        All.AddRange([_table, _sort, _reverse, _where]);
        if (columns.FirstOrDefault(column => column.Form == Form.Date) is { } date && !own.Contains("--from"))
        {
            _from = Typed.Option("--from", "DATE", Text.Date,
                $"only rows from that day on, by {ColumnNames.Title(date.Name)}");
            _to = Typed.Option("--to", "DATE", Text.Date, "only rows up to that day");
            All.AddRange([_from, _to]);
        }

        foreach (var name in new[] { "kind", "item" })
            if (columns.Any(column => column.Name == name) && !own.Contains($"--{name}"))
                _exact.Add((Typed.Option<string?>($"--{name}", name.ToUpperInvariant(), Text.NotEmpty,
                    $"only rows of that {name}"), name));
        All.AddRange(_exact.Select(one => one.Option));
    }

    /// <summary>All of them, in the order in which help shows them.</summary>
    public List<Option> All { get; }

    /// <summary>The options that take a value of a column of the first table, and the column.</summary>
    public IEnumerable<(Option<string?> Option, string Column)> Exact => _exact;

    /// <summary>The option that takes a column and a text.</summary>
    public Option<string[]> Where => _where;

    public DocumentFormat Format(ParseResult parse) => (parse.GetValue(_format), parse.GetValue(_json)) switch
    {
        (null, false) => DocumentFormat.Text,
        (null or DocumentFormat.Json, _) => DocumentFormat.Json,
        (var format, false) => format.Value,
        (var format, _) => throw new FormatException(
            $"--json and --format {_formats[(int)format]} do not go together; say one of them"),
    };

    /// <summary>Whether a table was named.</summary>
    public bool NamesTable(ParseResult parse) => parse.GetValue(_table) is not null;

    /// <summary>Whether anything is said of rows.</summary>
    public bool Chooses(ParseResult parse) =>
        parse.GetValue(_sort) is not null || parse.GetValue(_reverse) || parse.GetValue(_where) is { Length: > 0 }
            || (_from is not null && (parse.GetValue(_from) ?? parse.GetValue(_to!)) is not null)
            || _exact.Any(one => parse.GetValue(one.Option) is not null);

    /// <summary>The position of the table that is meant.</summary>
    /// <exception cref="FormatException">There is none of that name.</exception>
    public int Table(ParseResult parse)
    {
        if (parse.GetValue(_table) is not { } name)
            return 0;
        var names = _tables.Select(table => table.Name).ToList();
        var found = names.FindIndex(one => one.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase));
        if (found < 0 && names.Count(one => IsLast(one, name)) == 1)
            found = names.FindIndex(one => IsLast(one, name));
        return found >= 0 ? found : throw new FormatException(
            $"--table: there is no table \"{name}\"; {Spelling.Meant(name, names)}the tables are "
                + $"{string.Join(", ", names)}");
    }

    /// <summary>Which rows of the table that is meant are kept, and in which order.</summary>
    /// <param name="parse">What was typed.</param>
    /// <param name="view">What is looked at.</param>
    /// <param name="atMost">How many are kept at most.</param>
    /// <exception cref="FormatException">A column is not there.</exception>
    public RowChoice Choice(ParseResult parse, View view, int atMost)
    {
        var columns = _tables[Table(parse)].Columns;
        var conditions = (parse.GetValue(_where) ?? []).Select(text => Contains(text, columns, view)).ToList();
        foreach (var (option, name) in _exact)
            if (parse.GetValue(option) is { } value)
            {
                var column = ColumnNames.Find(columns, name, option.Name);
                conditions.Add(row => row[column] is string text
                    && text.Equals(value.Trim(), StringComparison.OrdinalIgnoreCase));
            }

        if (_from is not null && (parse.GetValue(_from), parse.GetValue(_to!)) is var (from, to)
            && (from ?? to) is not null)
            conditions.Add(Between(from, to, columns));
        int? sorting = parse.GetValue(_sort) is { } sort ? ColumnNames.Find(columns, sort, _sort.Name) : null;
        return new(
            row => conditions.TrueForAll(condition => condition(row)), sorting,
            sorting is { } at ? columns[at].Form : null, parse.GetValue(_reverse), atMost);
    }

    private static Func<object?[], bool> Between(LocalDate? from, LocalDate? to, IReadOnlyList<TableColumn> columns)
    {
        if (from > to)
            throw new FormatException(
                $"the period ends on {Dates.Text(to!.Value)}, before it begins on {Dates.Text(from!.Value)}");
        var column = columns.ToList().FindIndex(one => one.Form == Form.Date);
        return column < 0 ? throw new FormatException("--from and --to need a table with a date")
            : row => row[column] is LocalDate day && (from is null || day >= from) && (to is null || day <= to);
    }

    private static Func<object?[], bool> Contains(string text, IReadOnlyList<TableColumn> columns, View view)
    {
        var (name, wanted) = (text[..text.IndexOf('~', StringComparison.Ordinal)],
            text[(text.IndexOf('~', StringComparison.Ordinal) + 1)..].Trim());
        var column = ColumnNames.Find(columns, name, "--where");
        var form = columns[column].Form;
        return row => row[column] is { } value && form.Cells(value, view).Append(form.Shown(value, view))
            .Any(cell => cell.Contains(wanted, StringComparison.OrdinalIgnoreCase));
    }

    private static string Condition(string text) => text.IndexOf('~', StringComparison.Ordinal) > 0 ? text
        : throw new FormatException($"\"{text}\" is not a column and a text; write it as item~fen");

    private static bool IsLast(string path, string name) =>
        path.EndsWith($".{name.Trim()}", StringComparison.OrdinalIgnoreCase);

    private IReadOnlyList<TableColumn> Columns(ParseResult parse)
    {
        try
        {
            return _tables[Table(parse)].Columns;
        }
        catch (FormatException)
        {
            return [];
        }
    }
}
