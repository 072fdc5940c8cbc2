namespace Ledger.Terminal.Forms;

/// <summary>The forms about holders, each with the sides of a holder in it that it can be about.</summary>
internal static class HolderForms
{
    /// <summary>Sheets are loaded into the empty sides of a holder.</summary>
    public static KindForm Load(ILedger ledger, string? holder) => new(
        ledger, "load",
        ("sides", Sides(ledger, holder, " ", (film, side) => side.OutOfService is null && film.In(side) is null)));

    /// <summary>The first sheet of a holder that was not exposed yet is exposed; of any, without one.</summary>
    public static KindForm Expose(ILedger ledger, string? holder)
    {
        var film = ledger.HoldingsOn(ledger.Today).Film;
        return new(ledger, "exposure", ("sides", film.HoldersInUse.Where(one => holder is null || one.Code == holder)
            .SelectMany(one => one.Sides).FirstOrDefault(side => film.In(side) is { Exposure: null })?.Code));
    }

    /// <summary>The sheets of a holder leave it; or those of a place that is named.</summary>
    public static KindForm Unload(ILedger ledger, string? from) => new(
        ledger, "unload", ("from", Sides(ledger, from, ", ", (film, side) => film.In(side) is not null) ?? from));

    private static string? Sides(ILedger ledger, string? holder, string divider,
        Func<FilmRegister, HolderSide, bool> suits)
    {
        var film = ledger.HoldingsOn(ledger.Today).Film;
        return holder is not null && film.Holder(holder) is { } known
            ? string.Join(divider, known.Sides.Where(side => suits(film, side)).Select(side => side.Code)) : null;
    }
}
