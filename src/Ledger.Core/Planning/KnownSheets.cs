using Ledger.Core.Film;
using Ledger.Core.Journal;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Planning;

/// <summary>Sheets that have left their boxes: in holders, or in boxes of exposed sheets.</summary>
public static class KnownSheets
{
    /// <summary>
    /// The exposed sheets that wait for their development, by film and group, the first loaded first.
    /// </summary>
    /// <param name="holdings">What the ledger holds.</param>
    /// <param name="film">Of this film only; null for all.</param>
    /// <param name="group">Of this group only; null for all.</param>
    /// <param name="until">Exposed up to this day only; null for all.</param>
    public static IEnumerable<Sheet> Exposed(Holdings holdings, string? film = null, string? group = null,
        LocalDate? until = null) =>
        holdings.Film.Sheets
            .Where(sheet => sheet.Exposure is { } exposure
                && (film is null || sheet.Item.Equals(film.Trim(), StringComparison.OrdinalIgnoreCase))
                && (group is null || exposure.Group.Equals(group.Trim(), StringComparison.OrdinalIgnoreCase))
                && (until is not { } last || exposure.Date <= last))
            .OrderBy(sheet => sheet.Item, StringComparer.OrdinalIgnoreCase)
            .ThenBy(sheet => sheet.Exposure!.Group, StringComparer.OrdinalIgnoreCase)
            .ThenBy(sheet => sheet.Id.Value);

    /// <summary>
    /// A request for such sheets: a line for each film and group that names them by their numbers, so that the sheets
    /// of a holder or a subject can be spread over the batches.
    /// </summary>
    public static IReadOnlyList<RequestedSheets> Request(IEnumerable<Sheet> sheets) =>
    [
        .. sheets.DistinctBy(sheet => sheet.Id)
            .GroupBy(sheet => (Film: sheet.Item, Group: sheet.Exposure?.Group ?? ""))
            .Select(lines => new RequestedSheets
            {
                Film = lines.Key.Film, Count = lines.Count(), Group = lines.Key.Group,
                From = string.Join(", ", lines.Select(sheet => sheet.Id)),
            }),
    ];

    /// <summary>
    /// The sheets that stand in what is named, such as "E07-1, #12" or "fen80 N"; a name that is not known stands for
    /// none.
    /// </summary>
    public static IReadOnlyList<Sheet> Find(string from, FilmRegister register) =>
        [.. Names(from).SelectMany(name => Named(name, register) ?? []).Distinct()];

    /// <summary>The sheets that a line names; the first so many of a box of exposed sheets.</summary>
    /// <exception cref="RefusedException">There are not so many of that film.</exception>
    internal static IReadOnlyList<Sheet> Of(RequestedSheets line, Item film, Holdings holdings)
    {
        if (line.From is not { Length: > 0 } from)
            return [];
        var sheets = Names(from).SelectMany(name => Named(name, holdings.Film) ?? throw new RefusedException(
                RefusalKind.Unknown,
                $"there is no sheet, holder side or box of exposed sheets \"{name}\" any more; `show holders` lists "
                    + "them")).Distinct()
            .Where(sheet => sheet.Item.Equals(film.Code, StringComparison.OrdinalIgnoreCase)).Take(line.Count).ToList();
        return sheets.Count == line.Count ? sheets : throw new RefusedException(
            RefusalKind.MoreThanHeld,
            $"{line.Count} of {film.Code} are wanted from {from}, and {film.Of(sheets.Count)} wait there; ask for at "
                + "most those");
    }

    /// <summary>The holder that a sheet came out of, or is in.</summary>
    internal static string HolderOf(Sheet sheet, FilmRegister register) => register.Side(sheet.Side)?.Holder ?? "";

    private static string[] Names(string from) =>
        from.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    private static IEnumerable<Sheet>? Named(string name, FilmRegister register)
    {
        if (SheetId.Parse(name) is { } id && register.Sheet(id) is { } sheet)
            return [sheet];
        if (register.ExposedBox(name) is { } box)
            return register.At(box.Place);
        if (register.Side(name) is { } side)
            return (register.In(side) ?? register.LastOutOf(side)) is { } known ? [known] : [];
        return register.Holder(name)?.Sides.Select(register.In).OfType<Sheet>();
    }
}
