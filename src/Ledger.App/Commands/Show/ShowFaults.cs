namespace Ledger.App.Commands.Show;

/// <summary>show faults: rejects over time, and whether a side is worse than the others beyond chance.</summary>
internal sealed class ShowFaults : ShowCommand<FaultsOverTime>
{
    private static readonly Shape<(FaultRow Row, int Rows)> _row = new Shape<(FaultRow Row, int Rows)>()
        .Text("name", fault => fault.Row.Name)
        .Whole("sheets", fault => fault.Row.Sheets)
        .Whole("rejects", fault => fault.Row.Rejects)
        .Figure("percent", fault => fault.Row.Percent is { } percent ? decimal.Round(percent, 2) : null)
        .Chance("chance", fault => fault.Row.Chance, "how often chance alone would do it, by Fisher's exact test")
        .Text("verdict", fault => fault.Row.Verdict(fault.Rows))
        .Flag("isFew", fault => fault.Row.IsFew)
        .Counts("causes",
            (fault, _) => fault.Row.Causes.Select(cause => KeyValuePair.Create(cause.Item1, (long)cause.Item2)));

    private static readonly Shape<FaultsOverTime> _shape = Groupings(new Shape<FaultsOverTime>()
        .Date("from", faults => faults.From)
        .Date("to", faults => faults.To)
        .Whole("sheets", faults => faults.Sheets)
        .Whole("rejects", faults => faults.Rejects));

    private readonly Option<LocalDate?> _from = Typed.Option("--from", "DATE", Text.Date,
        "the first day; otherwise the first of all");
    private readonly Option<LocalDate?> _to = Typed.Option("--to", "DATE", Text.Date,
        "the last day; otherwise today, or the day of --as-of");

    public ShowFaults(Workbench bench)
        : base(bench, "faults",
            "Shows rejects by cause, holder side, film, process and month, and what is worse than the others.", """
            Each with the share of the sheets that were to become negatives. Whether a side, an
            emulsion or a process is worse than the others is told by Fisher's exact test: how
            often chance alone would do it. Few sheets say little, and are marked.
            Example: trayledger show faults
            """, _shape, ["--from", "--to"])
    {
        Options.Add(_from);
        Options.Add(_to);
    }

    protected override FaultsOverTime Read(View view, ParseResult parse)
    {
        var (from, to) = (parse.GetValue(_from) ?? new(1900, 1, 1), parse.GetValue(_to) ?? view.AsOf);
        if (from > to)
            throw new FormatException($"the period ends on {Dates.Text(to)}, before it begins on {Dates.Text(from)}");
        return new(view.Ledger.Cards(new SheetSearch(), view.AsOf), from, to);
    }

    protected override void WriteText(FaultsOverTime faults, View view, TextWriter output)
    {
        if (faults.Sheets == 0)
        {
            output.WriteLine("No sheet was developed.");
            return;
        }

        output.WriteLine($"{faults.Rejects} of {faults.Sheets} sheets are rejects");
        foreach (var grouping in Enum.GetValues<FaultGrouping>())
        {
            var rows = faults.By(grouping);
            if (rows.Count == 0)
                continue;
            output.WriteLine();
            var hasCauses = grouping != FaultGrouping.Cause;
            var table = new TextTable([
                Column.Left("by " + FaultsOverTime.Groupings[(int)grouping]), Column.Right("rejects"),
                    Column.Right("of"), Column.Right("share"),
                .. hasCauses ? [Column.Left("causes"), Column.Left("")] : Array.Empty<Column>(),
            ]);
            foreach (var row in rows)
                table.Add([
                    row.Name, Scaled.ToText(row.Rejects, 0), Scaled.ToText(row.Sheets, 0), row.Percent is { } percent
                        ? $"{Scaled.ToText(percent, 1)} %" : "-",
                    .. hasCauses ? [row.CausesText, row.Verdict(rows.Count)] : Array.Empty<string>(),
                ]);
            table.WriteTo(output, view.Width);
        }
    }

    private static Shape<FaultsOverTime> Groupings(Shape<FaultsOverTime> shape)
    {
        foreach (var grouping in Enum.GetValues<FaultGrouping>())
        {
            var name = FaultsOverTime.Groupings[(int)grouping];
            shape.Table($"by{name[..1].ToUpperInvariant()}{name[1..]}", (faults, _) => Rows(faults.By(grouping)), _row);
        }

        return shape;

        static IEnumerable<(FaultRow, int)> Rows(IReadOnlyList<FaultRow> rows) => rows.Select(row => (row, rows.Count));
    }
}
