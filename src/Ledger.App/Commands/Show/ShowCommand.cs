using System.CommandLine.Completions;
using System.Text.Json;
using Ledger.Storage;

namespace Ledger.App.Commands.Show;

/// <summary>
/// Shows one reading as it stands today or stood on another day: as text, as one JSON document, or one of its tables.
/// What is not text follows from the description of the document alone.
/// </summary>
/// <typeparam name="TReading">What is shown.</typeparam>
internal abstract class ShowCommand<TReading> : ExplainedCommand, IDescribed
    where TReading : notnull
{
    private readonly Workbench _bench;
    private readonly DocumentShape _shape;
    private readonly List<Table> _tables;
    private readonly RowOptions _rows;
    private readonly Option<LocalDate?> _asOf = Typed.Option(
        "--as-of", "DATE", Text.Date, "the ledger as it stood on that day, with that day as today");

    private readonly Option<LocalDate?> _knownOn = Typed.Option(
        "--known-on", "DATE", Text.Date,
        "only what had been recorded by the end of that day; otherwise all that is known now. Without --as-of the "
            + "ledger stands as on that day");

    /// <param name="bench">What the command works with.</param>
    /// <param name="name">Its name.</param>
    /// <param name="summary">What it is for.</param>
    /// <param name="details">How it works, and examples.</param>
    /// <param name="shape">What stands in its document.</param>
    /// <param name="own">Names of options of its own that would otherwise follow from its tables.</param>
    protected ShowCommand(
        Workbench bench, string name, string summary, string details, Shape<TReading> shape,
        IReadOnlyCollection<string>? own = null)
        : base(name, summary, details)
    {
        (_bench, _shape) = (bench, shape);
        _tables = [.. shape.Tables, .. Own(shape, name)];
        _rows = new([.. _tables.Select(table => (table.Path, table.Columns))], own ?? []);
        Options.Add(_asOf);
        Options.Add(_knownOn);
        foreach (var option in _rows.All)
            Options.Add(option);
        foreach (var (option, column) in _rows.Exact)
            option.CompletionSources.Add(context => Values(context, column, ""));
        _rows.Where.CompletionSources.Add(
            context => context.WordToComplete.IndexOf('~', StringComparison.Ordinal) is > 0 and var at
                ? Values(context, context.WordToComplete[..at], context.WordToComplete[..(at + 1)])
                : _tables[0].Columns.Select(column => new CompletionItem($"{column.Name}~")));
        SetAction(Run);
    }

    public override IEnumerable<string> More =>
    [
        "", "Tables for --format csv and tsv, --sort and --where; the first where --table names none:",
        .. _tables.Select(table => $"  {table.Path}: {string.Join(", ", table.Columns.Select(column => column.Name))}"),
    ];

    /// <summary>How many rows are shown at most; null where all are.</summary>
    protected LastOption? Last { get; init; }

    public void Describe(Utf8JsonWriter json) => _shape.Describe(json);

    /// <summary>Reads what is shown.</summary>
    protected abstract TReading Read(View view, ParseResult parse);

    /// <summary>Writes it for a person.</summary>
    protected abstract void WriteText(TReading reading, View view, TextWriter output);

    /// <summary>How the command ends.</summary>
    protected virtual int Status(TReading reading, ParseResult parse) => ExitStatus.Done;

    /// <summary>How many rows are to be read: all of them, where some are chosen among them.</summary>
    protected int AtMost(ParseResult parse) => _rows.Chooses(parse) ? int.MaxValue : Last?.In(parse) ?? int.MaxValue;

    /// <summary>What a document says beside its tables is a table too, of one row.</summary>
    private static IEnumerable<Table> Own(DocumentShape shape, string name)
    {
        Cell[] cells = [.. shape.Cells.Where(cell => cell.Name != "asOf")];
        return cells.Length == 0 ? [] :
        [
            new(name, [.. cells.Select(cell => new TableColumn(cell.Name, cell.Form))],
                (reading, view) => [[.. cells.Select(cell => cell.Of(reading, view))]]),
        ];
    }

    private int Run(ParseResult parse)
    {
        using var ledger = _bench.OpenToRead(parse);
        using var then = parse.GetValue(_knownOn) is { } day && day < ledger.Today ? ledger.KnownOn(day) : null;
        var shown = then ?? ledger;
        return shown.Read(() => Show(shown, parse));
    }

    private int Show(LedgerFile ledger, ParseResult parse)
    {
        var asOf = parse.GetValue(_asOf) ?? ledger.Today;
        var view = new View(ledger, ledger.HoldingsOn(asOf), asOf, _bench.Around.Width);
        var reading = Read(view, parse);
        Write(Chosen(reading, view, parse), view, parse);
        return Status(reading, parse);
    }

    /// <summary>The reading with the chosen rows only, where it can be made without the others.</summary>
    private TReading Chosen(TReading reading, View view, ParseResult parse) =>
        _rows.Chooses(parse) && _tables[_rows.Table(parse)].Keep is { } keep
            ? (TReading)keep(reading, view, _rows.Choice(parse, view, Last?.In(parse) ?? int.MaxValue)) : reading;

    private void Write(TReading reading, View view, ParseResult parse)
    {
        var (format, output) = (_rows.Format(parse), _bench.Around.Out);
        var isWhole = !_rows.NamesTable(parse)
            && (!_rows.Chooses(parse) || _tables[_rows.Table(parse)].Keep is not null);
        switch (format)
        {
            case DocumentFormat.Json when !isWhole:
                throw new FormatException(
                    "JSON holds all tables; name one with --table where the format is text, csv or tsv");
            case DocumentFormat.Json:
                JsonText.Write(output, json => _shape.WriteFields(reading, view, json));
                break;
            case DocumentFormat.Text when isWhole:
                using (var text = new FittedText(output, view.Width))
                    WriteText(reading, view, text);
                break;
            default:
                WriteTable(reading, view, format, parse);
                break;
        }
    }

    private void WriteTable(TReading reading, View view, DocumentFormat format, ParseResult parse)
    {
        var table = _tables[_rows.Table(parse)];
        var rows = table.Rows(reading, view);
        if (_rows.Chooses(parse) && table.Keep is null)
            rows = _rows.Choice(parse, view, int.MaxValue).Of(rows, row => (object?[])row).Cast<object?[]>();
        switch (format)
        {
            case DocumentFormat.Csv: TableFile.WriteCsv(table.Columns, rows, view, _bench.Around.Out); break;
            case DocumentFormat.Tsv: TableFile.WriteTsv(table.Columns, rows, view, _bench.Around.Out); break;
            default: TableFile.WriteText(table.Columns, rows, view, _bench.Around.Out); break;
        }
    }

    /// <summary>What stands in a column of the first table, for completion.</summary>
    private IEnumerable<CompletionItem> Values(CompletionContext context, string column, string before) =>
        _bench.Glance(context.ParseResult, (ledger, holdings) =>
        {
            var view = new View(ledger, holdings, holdings.AsOf, _bench.Around.Width);
            var (table, parse) = (_tables[0], context.ParseResult);
            var at = ColumnNames.Find(table.Columns, column, "--where");
            return table.Rows(Read(view, parse), view).Select(row => row[at]).OfType<object>()
                .Select(value => before + table.Columns[at].Form.Shown(value, view))
                .Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        }).Where(value => value.StartsWith(context.WordToComplete, StringComparison.OrdinalIgnoreCase))
            .Select(value => new CompletionItem(value));
}
