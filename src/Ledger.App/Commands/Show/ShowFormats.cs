namespace Ledger.App.Commands.Show;

/// <summary>show formats: the formats with their areas in both units.</summary>
internal sealed class ShowFormats(Workbench bench) : ShowCommand<IReadOnlyList<Format>>(
    bench, "formats", "Shows the formats of film and paper, with the area that one sheet or roll counts with.",
    """
    Any other size is written as it is, such as 7x17in or 100x125mm. `record format`
    adds one or changes its area.
    Example: trayledger show formats
    """, _shape)
{
    private static readonly Shape<IReadOnlyList<Format>> _shape = new Shape<IReadOnlyList<Format>>()
        .AsOf()
        .Table("formats", (formats, _) => formats, new Shape<Format>()
            .Text("format", format => format.Code)
            .Text("unit", format => format.Unit.Name())
            .Area("areaSqIn", format => format.Area)
            .Figure("areaCm2", format => format.Area.SquareCentimetres)
            .Figure("unitsOf80SqIn", InUnits)
            .Flag("isOwn", (format, view) => view.Holdings.Formats.IsOwn(format)),
            (_, rows) => rows);

    protected override IReadOnlyList<Format> Read(View view, ParseResult parse) => view.Holdings.Formats.All;

    protected override void WriteText(IReadOnlyList<Format> formats, View view, TextWriter output)
    {
        var table = new TextTable(
            Column.Left("format"), Column.Left("counted in"), Column.Right("sq in"), Column.Right("cm2"),
            Column.Right("in 8x10"), Column.Left("area"));
        foreach (var format in formats)
            table.Add(
                format.Code, format.Unit.Plural(), Scaled.ToText(format.Area.SquareInches, 4),
                Scaled.ToText(format.Area.SquareCentimetres, 4), Scaled.ToText(InUnits(format), 4),
                Basis(format, view));
        table.WriteTo(output, view.Width);
    }

    private static decimal InUnits(Format format) => format.Area.SquareInches / Area.Unit80.SquareInches;

    private static string Basis(Format format, View view) =>
        view.Holdings.Formats.IsOwn(format) ? "your own" : format.Unit == Unit.Roll ? "by convention" : "of its size";
}
