namespace Ledger.App.Commands.Show;

/// <summary>A bath as a person reads it: what it is, what it took, what it can take, how old it is.</summary>
internal static class BathText
{
    /// <summary>
    /// The formats of what passes through a bath, the smallest first; the known ones while the ledger has none.
    /// </summary>
    public static IReadOnlyList<Format> Formats(BathMaterial material, View view) =>
        view.Holdings.FormatsOf(material) is { Count: > 0 } own ? own : view.Holdings.Formats.All;

    public static void Write(TextWriter output, BathReading reading, View view)
    {
        var bath = reading.Bath;
        var what = $"{bath.Role.Name()} for {bath.Material.Name()}";
        var isInUse = bath.Discarded is null;
        output.WriteProse(
            $"{bath.Code}: {what}, {bath.WorkingVolume.ToText(view.Style)} of {bath.Item} {bath.Dilution}"
            + (bath.Discarded is { } gone ? $", discarded {Dates.Text(gone.On)}: {gone.Reason}" : Pair(bath, view)),
            view.Width);
        var lines = new TextTable(Column.Left(""), Column.Left(""));
        lines.Add("  used", Taken(reading, view));
        lines.Add("  left", Left(reading, isInUse, view));
        lines.Add("  age", Age(reading));
        foreach (var end in reading.Ends)
            lines.Add(
                $"  {(end.By == BathEnd.Age ? "expired" : "exhausted")}",
                $"{Dates.Text(end.On)} by {end.By.Name()}: {end.Reason}{(isInUse ? "; do not use it again" : "")}");
        if (bath.Suspicion is { } suspicion && isInUse)
            lines.Add("  suspicion", $"{suspicion.Text}: nothing goes through it until it is cleared");
        if (isInUse && reading.ComesFirst is { } next)
            lines.Add("  comes first",
                $"end by {next.By.Name()}, about {Dates.Text(next.On)} at the use so far ({next.Reason})");
        lines.WriteTo(output, view.Width);
    }

    private static string Pair(Bath bath, View view) =>
        view.Holdings.IsSecond(bath) ? $", second after {bath.PairedWith}"
        : view.Holdings.SecondAfter(bath) is { } second ? $", first before {second.Code}"
        : "";

    private static string Taken(BathReading reading, View view)
    {
        var bath = reading.Bath;
        var weighted = bath.Worked == bath.WorkedWeighted
            ? ""
            : $", {bath.WorkedWeighted.ToText(view.Style)} by fixer factor";
        var perLitre = Area.FromSquareInches(reading.ThroughputSquareInchesPerLitre).ToText(view.Style);
        return $"{bath.Worked.ToText(view.Style)}{weighted}; {perLitre} per litre";
    }

    private static string Left(BathReading reading, bool isInUse, View view)
    {
        if (reading.Remaining is not { } left)
            return reading.Bath.Indicator is { } colour ? $"until its indicator is {colour}" : "no capacity is set";
        var capacity = reading.Bath.Capacity!;
        var sheets = string.Join(" or ", RoomForFilm.Of(reading, view.Holdings));
        return $"{left.ToText(view.Style)} of {reading.Bath.TotalCapacity!.Value.ToText(view.Style)}, "
            + $"{Scaled.ToText(reading.UsedPercent ?? 0, 1)} % used; "
            + $"capacity {capacity.PerLitre.ToText(view.Style)} per litre ({capacity.Basis})"
            + (reading.Bath.Indicator is { } spent ? $"; or until its indicator is {spent}" : "")
            + (reading.IsUnusable || !isInUse ? "" : $"; enough for {sheets}");
    }

    private static string Age(BathReading reading)
    {
        var age = $"{Counted.Of(reading.AgeDays, "day")}, mixed {Dates.Text(reading.Bath.MixedOn)}";
        return reading.GoodUntil is { } good
            ? $"{age}; good until {Dates.Text(good.Date)} (limited by {good.Rule.Name()})"
            : age;
    }
}
