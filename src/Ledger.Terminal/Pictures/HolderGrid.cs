namespace Ledger.Terminal.Pictures;

/// <summary>
/// The holders as a rack: each with both its sides, a mark for what is in them, readable without colour. Of more than a
/// rack takes those are shown that stand with the selected one.
/// </summary>
internal static class HolderGrid
{
    private const int MostShown = 240;

    /// <summary>What the marks mean.</summary>
    public const string Legend =
        ". empty   L loaded   X exposed   ! longer than your limit   - out of service   ~ not clean";

    /// <summary>The lines of the grid, as many holders on each as the width takes.</summary>
    /// <param name="film">The holders.</param>
    /// <param name="limits">The user's limits.</param>
    /// <param name="today">The day.</param>
    /// <param name="selected">The holder that is pointed at.</param>
    /// <param name="width">The columns there are.</param>
    public static IEnumerable<string> Of(FilmRegister film, FilmSettings limits, LocalDate today,
        string? selected, int width)
    {
        var names = film.Names;
        var first = names.TakeWhile(name => name.Code != selected).Count() is var at && at < names.Count
            ? at / MostShown * MostShown
            : 0;
        var shown = names.Skip(first).Take(MostShown).Select(name => name.Code).ToList();
        var cells = shown.Select(code => Cell(film.Holder(code)!, film, limits, today, code == selected)).ToList();
        if (cells.Count == 0)
            return [];
        var cell = cells.Max(text => text.Length) + 1;
        return
        [
            .. cells.Select(text => text.PadRight(cell)).Chunk(Math.Max(1, width / cell))
                .Select(line => string.Concat(line).TrimEnd()),
            .. shown.Count == names.Count
                ? []
                : Paragraph.Of($"{shown[0]} to {shown[^1]}, of {names.Count} holders", width),
        ];
    }

    private static string Cell(Holder holder, FilmRegister film, FilmSettings limits, LocalDate today,
        bool isSelected) =>
        $"{(isSelected ? ">" : " ")}{holder.Code}["
            + $"{string.Join('|', holder.Sides.Select(side => Mark(film.Read(side, today), limits)))}]"
        + (holder.CleanBeforeLoad is not null && holder.Sides.Any(side => film.In(side) is null) ? "~" : "");

    private static string Mark(SideReading side, FilmSettings limits)
    {
        var mark = side.State switch { SideState.Loaded => "L", SideState.Exposed => "X",
            _ => side.Side.OutOfService is null ? "." : "" };
        return mark + (side.IsOverdue(limits) || side.IsFlagged(limits) ? "!" : "")
            + (side.Side.OutOfService is null ? "" : "-");
    }
}
