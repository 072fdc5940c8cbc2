using Ledger.Core.Baths;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal;

/// <summary>How many sheets of a format a bath still takes, by what the user's films ask of it.</summary>
/// <param name="Format">The format.</param>
/// <param name="FactorThousandths">The films' fixer factor, in thousandths; 1000 where the bath counts area
/// alone.</param>
/// <param name="Films">The codes of the user's films of that format and factor; none when the user has no such
/// film.</param>
/// <param name="Sheets">Whole sheets or rolls, never rounded up.</param>
public sealed record RoomForFilm(Format Format, int FactorThousandths, IReadOnlyList<string> Films, long Sheets)
{
    /// <summary>
    /// The formats of a bath's material, each with every factor of the user's films; none without a capacity.
    /// </summary>
    public static IReadOnlyList<RoomForFilm> Of(BathReading reading, Holdings holdings)
    {
        if (reading.Remaining is null)
            return [];
        var material = reading.Bath.Material;
        var formats = holdings.FormatsOf(material) is { Count: > 0 } own ? own : holdings.Formats.All;
        return [.. formats.SelectMany(format => Of(format, reading, holdings))];
    }

    /// <summary>What there is capacity left for, a format only by the film that asks for most.</summary>
    public static IEnumerable<RoomForFilm> Heaviest(IEnumerable<RoomForFilm> rooms) =>
        rooms.GroupBy(room => room.Format.Code).Select(format => format.MinBy(room => room.Sheets)!);

    /// <summary>"100 of 4x5 (fixer factor 1.5)", "150 of 4x5".</summary>
    public override string ToString() =>
        $"{Sheets} of "
            + $"{Format}{(FactorThousandths == 1000 ? ""
                : $" (fixer factor {Scaled.InUnits(FactorThousandths, 1000)})")}";

    private static IEnumerable<RoomForFilm> Of(Format format, BathReading reading, Holdings holdings)
    {
        var films = holdings.ItemsOf(ItemKind.Film)
            .Where(item => item.Format?.Code == format.Code
                && item.IsPaper == (reading.Bath.Material == BathMaterial.Paper)).ToList();
        return films.GroupBy(film => reading.Bath.Role == ItemRole.Fixer ? film.FixerFactorThousandths : 1000)
            .Select(group => (Factor: group.Key, Films: group.Select(film => film.Code).ToList()))
            .DefaultIfEmpty((Factor: 1000, Films: []))
            .OrderBy(group => group.Factor)
            .Select(group => new RoomForFilm(format, group.Factor, group.Films,
                reading.RemainingSheets(format, group.Factor)!.Value));
    }
}
