namespace Ledger.App.Commands.Show;

/// <summary>
/// What ends a bath, for a person: its capacities side by side, what came and what comes first, and its tests.
/// </summary>
internal static class BathStoryText
{
    private const string Indent = "  ";

    public static void Write(TextWriter output, BathReading reading, View view)
    {
        WriteBases(output, reading, view);
        WriteTests(output, reading, view);
        foreach (var seen in reading.Bath.Observations)
            output.WriteProse($"{Dates.Text(seen.Date)} {seen.Sign}{(seen.EndsUse ? ": not to be used any more" : "")}",
                view.Width, Indent);
        foreach (var silver in reading.Bath.SilverReadings)
            output.WriteLine(
                $"  {Dates.Text(silver.Date)} {Scaled.ToText(silver.GramsPerLitre, 3)} g of silver per litre");
        foreach (var test in reading.Bath.ResidualTests)
            output.WriteProse(
                $"{Dates.Text(test.Date)} residual {test.Kind}{(test.Session is { } session ? $" in {session}" : "")}: "
                    + $"{test.Result}, "
                + (test.HasPassed ? "passed" : "failed"),
                view.Width, Indent);
        foreach (var strip in reading.Bath.ControlStrips)
            output.WriteProse(
                $"{Dates.Text(strip.Date)} control strip: {strip.Result}, "
                    + $"{(strip.IsWithinLimits ? "within limits" : "out of limits")}",
                view.Width, Indent);
        foreach (var top in reading.Bath.TopUps)
            output.WriteProse(
                $"{Dates.Text(top.Date)} {top.Added.ToText(view.Style)} added, {top.Bled.ToText(view.Style)} taken out",
                view.Width, Indent);
        if (reading.Replenishment is { } due)
            output.WriteProse(
                $"replenisher due {due.Due.ToText(view.Style)}; {due.Added.ToText(view.Style)} added "
                + $"of at most {due.Ceiling.ToText(view.Style)}",
                view.Width, Indent);
    }

    private static void WriteBases(TextWriter output, BathReading reading, View view)
    {
        if (reading.Bases.Count < 2)
            return;
        var formats = BathText.Formats(reading.Bath.Material, view);
        var table = new TextTable([
            Column.Left("  basis"), Column.Right("per litre"), Column.Right("used"), Column.Right("left"),
            .. formats.Select(format => Column.Right(format.Code)),
        ]);
        foreach (var basis in reading.Bases)
            table.Add([
                "  " + basis.Capacity.Basis, basis.Capacity.PerLitre.ToText(view.Style),
                $"{Scaled.ToText(basis.UsedPercent, 1)} "
                    + "%", basis.Remaining.ToText(view.Style),
                        .. formats.Select(format => Scaled.ToText(basis.RemainingSheets(format), 0)),
            ]);
        table.WriteTo(output, view.Width);
    }

    private static void WriteTests(TextWriter output, BathReading reading, View view)
    {
        if (reading.Bath.ClearingTests.Count == 0)
            return;
        var table = new TextTable(
            Column.Left(
                "  clearing test"), Column.Left("film"), Column.Right("after"), Column.Right("seconds"),
                    Column.Right("times fresh"));
        foreach (var test in reading.Bath.ClearingTests)
            table.Add(
                "  " + Dates.Text(test.Date), test.Film, test.Worked.ToText(view.Style), Scaled.ToText(test.Seconds, 1),
                test.IsFresh ? "fresh" : test.Ratio is { } ratio ? Scaled.ToText(ratio, 2) : "-");
        table.WriteTo(output, view.Width);
        output.WriteProse($"{reading.Clearing.Text}; fix for {Scaled.ToText(reading.FixingSeconds ?? 0, 1)} s at least",
            view.Width, Indent);
    }
}
