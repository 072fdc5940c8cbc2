namespace Ledger.App.Commands.Show;

/// <summary>show jugs: what waits in waste jugs, and what was handed over.</summary>
internal sealed class ShowJugs(Workbench bench) : ShowCommand<IReadOnlyList<WasteJug>>(
    bench, "jugs", "Shows the waste jugs: what is in each, since when, and where it went.",
    "Example: trayledger show jugs", _shape)
{
    private static readonly Shape<IReadOnlyList<WasteJug>> _shape = new Shape<IReadOnlyList<WasteJug>>()
        .AsOf()
        .Table("jugs", (jugs, _) => jugs, new Shape<WasteJug>()
            .Text("jug", jug => jug.Code)
            .Text("contents", jug => jug.Contents)
            .Text("wasteKind", jug => jug.Waste.Name())
            .Volume("size", jug => jug.Size)
            .Volume("held", jug => jug.Held)
            .Date("startedOn", jug => jug.StartedOn)
            .Date("handedOverOn", jug => jug.HandedOverOn)
            .Word("handedTo", jug => jug.HandedTo)
            .Table("fills", (jug, _) => jug.Fills, new Shape<JugFill>()
                .Date("date", fill => fill.Date)
                .Volume("volume", fill => fill.Volume)
                .Text("what", fill => fill.What)
                .Word("material", fill => fill.Material?.Name())),
            (_, rows) => rows);

    protected override IReadOnlyList<WasteJug> Read(View view, ParseResult parse) => view.Ledger.JugsOn(view.AsOf);

    protected override void WriteText(IReadOnlyList<WasteJug> jugs, View view, TextWriter output)
    {
        if (jugs.Count == 0)
            output.WriteLine("There is no jug: start one with `trayledger record jug-start`.");
        foreach (var jug in jugs)
        {
            output.WriteProse(
                $"{jug.Code}: {jug.Contents}, {jug.Held.ToText(view.Style)} of {jug.Size.ToText(view.Style)}, "
                + $"started {Dates.Text(jug.StartedOn)}",
                view.Width);
            var table = new TextTable(Column.Left(""), Column.Right(""), Column.Left(""));
            foreach (var fill in jug.Fills)
                table.Add("  " + Dates.Text(fill.Date), fill.Volume.ToText(view.Style), fill.What);
            table.WriteTo(output, view.Width);
            if (jug.HandedOverOn is { } day)
                output.WriteProse($"  handed over {Dates.Text(day)}: {jug.HandedTo}", view.Width);
        }

        if (jugs.Count > 0)
            output.WriteProse(
                "The maker's safety data sheet and local rules say where it may go; used fixer holds silver.",
                view.Width);
    }
}
