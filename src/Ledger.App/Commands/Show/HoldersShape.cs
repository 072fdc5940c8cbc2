namespace Ledger.App.Commands.Show;

/// <summary>The holders in their document.</summary>
internal static class HoldersShape
{
    private static readonly Shape<(SideReading Reading, FilmSettings Limits)> _side =
        new Shape<(SideReading Reading, FilmSettings Limits)>()
            .Text("side", row => row.Reading.Side.Code)
            .Text("name", row => row.Reading.Side.Name)
            .Text("state", row => row.Reading.StateName)
            .Word("outOfService", row => row.Reading.Side.OutOfService)
            .Word("sheet", row => row.Reading.Sheet?.Id.ToString())
            .Word("item", row => row.Reading.Sheet?.Item)
            .Word("batch", row => row.Reading.Sheet?.Lot.Batch)
            .Figure("exposureIndex", row => row.Reading.Sheet?.Lot.ExposureIndex)
            .Word("box", row => row.Reading.Sheet?.BoxCode)
            .Date("loadedOn", row => row.Reading.Sheet?.LoadedOn)
            .Date("exposedOn", row => row.Reading.Sheet?.Exposure?.Date)
            .Word("group", row => row.Reading.Sheet?.Exposure?.Group)
            .Word("subject", row => row.Reading.Sheet?.Exposure?.Subject)
            .Whole("days", row => row.Reading.Days, "how long the sheet is in it, or has been exposed")
            .Flag("isOverdue", row => row.Reading.IsOverdue(row.Limits))
            .Flag("isFlagged", row => row.Reading.IsFlagged(row.Limits))
            .Table("faults", (row, _) => row.Reading.Side.Faults, new Shape<SideFault>()
                .Text("cause", fault => fault.Cause.Name())
                .Whole("sheets", fault => fault.Sheets));

    public static Shape<FilmRegister> Of { get; } = new Shape<FilmRegister>()
        .AsOf()
        .Text("slideConvention", (_, view) => view.Holdings.Settings.Film.SlideConvention)
        .Table("holders", (film, _) => film.Holders, new Shape<Holder>()
            .Text("holder", holder => holder.Code)
            .Text("format", holder => holder.Format.Code)
            .Text("notch", holder => holder.Notch)
            .Date("boughtOn", holder => holder.BoughtOn)
            .Date("cleanedOn", holder => holder.CleanedOn)
            .Flag("isBagged", holder => holder.IsBagged)
            .Table("sides", (holder, view) => holder.Sides
                .Select(side => (view.Holdings.Film.Read(side, view.AsOf), view.Holdings.Settings.Film)), _side))
        .Table("exposedBoxes", (film, _) => film.ExposedBoxes, new Shape<ExposedBox>()
            .Text("box", box => box.Code)
            .Text("item", box => box.Item)
            .Text("group", box => box.Group)
            .Field("sheets", Form.Whole, (box, view) => (long)view.Holdings.Film.At(box.Place).Count())
            .Field("oldestExposure", Form.Date,
                (box, view) => view.Holdings.Film.At(box.Place).Min(sheet => sheet.Exposure!.Date)));
}
