namespace Ledger.Core.Tests.Journal;

public sealed class RoomForFilmTests
{
    [Fact]
    public void A_fixer_has_room_for_each_film_by_its_factor()
    {
        var ledger = Shelves.WithBath();
        var reading = new BathReading(ledger.Holdings.Bath("F1")!, ledger.Holdings.AsOf);
        var rooms = RoomForFilm.Of(reading, ledger.Holdings);
        var left = reading.Remaining!.Value;
        Assert.Equal(
            ledger.Holdings.Items.Where(item => item.Format is not null && !item.IsPaper)
                .Select(film => (film.Code,
                    left.Hundredths / (film.Format!.Area.Hundredths * film.FixerFactorThousandths / 1000))).Order(),
            rooms.SelectMany(room => room.Films.Select(film => (film, room.Sheets))).Order());
        Assert.All(
            RoomForFilm.Heaviest(rooms),
            heaviest => Assert.Equal(rooms.Where(room => room.Format == heaviest.Format).Min(room => room.Sheets),
                heaviest.Sheets));
        Assert.Contains(rooms, room => room.ToString().EndsWith("(fixer factor 1.5)", StringComparison.Ordinal));
    }
}
