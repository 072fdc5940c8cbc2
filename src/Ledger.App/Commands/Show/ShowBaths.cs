namespace Ledger.App.Commands.Show;

/// <summary>show baths: all working solutions in use.</summary>
internal sealed class ShowBaths(Workbench bench)
    : ShowCommand<IReadOnlyList<BathReading>>(bench, "baths",
        "Shows the baths in use: what went through each, the capacity left, and what ends it.",
        "Example: trayledger show baths", _shape)
{
    private static readonly Shape<IReadOnlyList<BathReading>> _shape = new Shape<IReadOnlyList<BathReading>>()
        .AsOf().Table("baths", (baths, _) => baths, BathShape.Of, (_, rows) => rows);

    protected override IReadOnlyList<BathReading> Read(View view, ParseResult parse) =>
        [.. view.Holdings.Baths.Select(bath => new BathReading(bath, view.AsOf))];

    protected override void WriteText(IReadOnlyList<BathReading> baths, View view, TextWriter output)
    {
        if (baths.Count == 0)
            output.WriteLine("No bath is in use: record one with `trayledger record bath`.");
        for (var i = 0; i < baths.Count; i++)
        {
            if (i > 0)
                output.WriteLine();
            BathText.Write(output, baths[i], view);
        }
    }
}
