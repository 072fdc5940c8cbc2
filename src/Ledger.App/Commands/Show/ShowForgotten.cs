namespace Ledger.App.Commands.Show;

/// <summary>show forgotten: boxes and bottles that nobody has touched for long.</summary>
internal sealed class ShowForgotten : ShowCommand<IReadOnlyList<Untouched>>
{
    private static readonly Shape<IReadOnlyList<Untouched>> _shape = new Shape<IReadOnlyList<Untouched>>()
        .AsOf()
        .Table("containers", (forgotten, _) => forgotten, new Shape<Untouched>()
            .Text("container", one => one.Container.Code)
            .Text("item", one => one.Container.Lot.Item)
            .Quantity("quantity", one => one.Container.Held)
            .Date("lastTouched", one => one.LastTouched)
            .Text("storage", one => one.Container.Storage),
            (_, rows) => rows);

    private readonly Option<int?> _months = Typed.Option(
        "--months", "N", Text.Whole, "for how many months; otherwise the setting forgotten-months");

    public ShowForgotten(Workbench bench)
        : base(bench, "forgotten", "Shows boxes and bottles that hold something and were not used for months.", """
            Example: trayledger show forgotten --months 6
            """, _shape) => Options.Add(_months);

    protected override IReadOnlyList<Untouched> Read(View view, ParseResult parse)
    {
        var months = parse.GetValue(_months) ?? view.Holdings.Settings.Film.ForgottenMonths;
        return months is >= 0 and <= 1200
            ? view.Ledger.UntouchedSince(view.AsOf.PlusMonths(-months), view.AsOf)
            : throw new FormatException("--months: write a number from 0 to 1200");
    }

    protected override void WriteText(IReadOnlyList<Untouched> forgotten, View view, TextWriter output)
    {
        if (forgotten.Count == 0)
            output.WriteLine("Nothing is forgotten.");
        var table = new TextTable(
            Column.Left("container"), Column.Right("holds"), Column.Left("last used"), Column.Left("batch"),
            Column.Left("kept in"));
        foreach (var (container, touched) in forgotten)
            table.Add(container.Code, container.Held.ToText(view.Style), Dates.Text(touched),
                container.Lot.Batch, container.Storage);
        table.WriteTo(output, view.Width);
    }
}
