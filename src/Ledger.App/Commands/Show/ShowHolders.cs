using System.CommandLine;
using System.Text.Json;
using Ledger.App.Output;
using Ledger.App.Wiring;
using Ledger.Core.Film;
using Ledger.Core.Measures;

namespace Ledger.App.Commands.Show;

/// <summary>show holders: every holder with its sides, and the boxes of exposed sheets.</summary>
internal sealed class ShowHolders(Workbench bench)
    : ShowCommand<FilmRegister>(bench, "holders",
        "The holders: what is in each side and for how long, and the boxes of exposed sheets.")
{
    protected override FilmRegister Read(View view, ParseResult parse) => view.Holdings.Film;

    protected override void WriteText(FilmRegister film, View view, TextWriter output)
    {
        if (!film.Holders.Any())
            output.WriteLine("No holder is registered: record one with `trayledger record holder`.");
        else
            output.WriteProse($"Slides: {view.Holdings.Settings.Film.SlideConvention}", view.Width);
        var table = new TextTable(
            Column.Left("holder"), Column.Left("format"), Column.Left("side"), Column.Left("state"), Column.Left("film"),
            Column.Left("group"), Column.Right("days"), Column.Left("cleaned"), Column.Left("remarks"));
        foreach (var holder in film.Holders)
            for (var i = 0; i < holder.Sides.Count; i++)
                Add(table, holder, film.Read(holder.Sides[i], view.AsOf), i == 0, view);
        table.WriteTo(output, view.Width);
        WriteBoxes(film, view, output);
    }

    protected override void WriteJson(FilmRegister film, View view, Utf8JsonWriter json) => HoldersJson.Write(film, view, json);

    private static void Add(TextTable table, Holder holder, SideReading side, bool isFirst, View view) => table.Add(
        isFirst ? holder.Code : "",
        isFirst ? holder.Format.Code : "",
        side.Side.Name,
        side.StateName,
        side.Sheet?.Item ?? "",
        side.Sheet?.Exposure?.Group ?? "",
        side.Days is { } days ? Scaled.ToText(days, 0) : "",
        isFirst && holder.CleanedOn is { } cleaned ? $"{Dates.Text(cleaned)}{(holder.IsBagged ? ", bagged" : "")}" : "",
        string.Join("; ", Remarks(side, view)));

    private static IEnumerable<string> Remarks(SideReading side, View view)
    {
        var limits = view.Holdings.Settings.Film;
        if (side.IsOverdue(limits))
            yield return side.State == SideState.Loaded ? $"longer than {limits.LoadedDays} days" : $"longer than {limits.ExposedDays} days";
        if (side.Side.OutOfService is { } reason)
            yield return reason;
        if (side.Side.Faults.Count > 0)
            yield return $"spoiled {string.Join(", ", side.Side.Faults.Select(fault => $"{fault.Sheets} {fault.Cause.Name()}"))}";
        if (side.Sheet?.Exposure is { Line.Length: > 0 } exposure)
            yield return exposure.Line;
    }

    private static void WriteBoxes(FilmRegister film, View view, TextWriter output)
    {
        var boxes = new TextTable(Column.Left("exposed box"), Column.Right("sheets"), Column.Left("oldest exposure"));
        foreach (var box in film.ExposedBoxes)
        {
            var sheets = film.At(box.Place).ToList();
            boxes.Add(box.Code, Scaled.ToText(sheets.Count, 0), Dates.Text(sheets.Min(sheet => sheet.Exposure!.Date)));
        }

        if (boxes.IsEmpty)
            return;
        output.WriteLine();
        boxes.WriteTo(output, view.Width);
    }
}
