using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Core.Costing;

/// <summary>What one developed sheet cost.</summary>
/// <param name="Called">What it is called in the ledger; nothing where it is a roll.</param>
/// <param name="Position">Its place in the order of the session, counting from 1.</param>
/// <param name="Session">The session.</param>
/// <param name="Item">The film's code.</param>
/// <param name="Fate">What became of it.</param>
/// <param name="Film">Its film.</param>
/// <param name="Developer">Its share of the developer.</param>
/// <param name="OtherChemistry">Its share of the baths and the other chemistry.</param>
/// <param name="Supplies">Its share of the supplies.</param>
public sealed record SheetCost(
    SheetName Called, long Position, string Session, string Item, Fate Fate, Money Film, Money Developer,
    Money OtherChemistry, Money Supplies)
{
    /// <summary>
    /// Its name, by which its story is found: its negative's number, or its own (#12); a roll's is its place, S02-03.
    /// </summary>
    public string Sheet => Called.Of(Session, Position);

    /// <summary>The number of its session's entry.</summary>
    public long Entry { get; init; }

    /// <summary>
    /// Whether its film, its chemistry and its supplies all had a price; otherwise it cost more than this.
    /// </summary>
    public bool IsComplete { get; init; } = true;

    /// <summary>The number it is filed under; null when it is no negative, or a roll.</summary>
    public string? Negative => Called.Negative;

    /// <summary>The process of its session.</summary>
    public string Process { get; init; } = "";

    /// <summary>The developer of its session; empty where it had none.</summary>
    public string Developing { get; init; } = "";

    /// <summary>The bath that its session is filed under; empty where it went through none.</summary>
    public string Bath { get; init; } = "";

    /// <summary>The emulsion number of its film; may be empty.</summary>
    public string Number { get; init; } = "";

    /// <summary>The day it was developed.</summary>
    public LocalDate Date { get; init; }

    /// <summary>The chemistry of both sorts.</summary>
    public Money Chemistry => Developer + OtherChemistry;

    /// <summary>All of it.</summary>
    public Money Total => Film + Developer + OtherChemistry + Supplies;

    /// <summary>
    /// The sheets of a session. Chemistry and supplies are shared by area, a fixer that is used again by area times
    /// fixer factor, as its capacity is counted. The largest remainder rounds, so that the sheets add up to the session
    /// exactly.
    /// </summary>
    public static IEnumerable<SheetCost> Of(SessionUse session)
    {
        var sheets = session.Lines.SelectMany(EachSheet).ToList();
        long[] areas = [.. sheets.Select(sheet => sheet.Area)];
        var developer = Share.Split(session.Developer.Millionths, areas);
        var other = Share.Split(session.OtherChemistry.Millionths, areas);
        long[] weighted = [.. sheets.Select(sheet => sheet.Area * sheet.Line.FixerFactorThousandths)];
        foreach (var bath in session.Baths)
            Add(Share.Split(bath.UsedUp.Millionths, bath.Share.IsWeighted ? weighted : areas), other);
        var supplies = Share.Split(session.Supplies.Millionths, areas);
        return sheets.Select((sheet, i) => new SheetCost(
            session.Sheets.GetValueOrDefault(i + 1), i + 1, session.Session, sheet.Line.Item, sheet.Line.Fate,
            new(sheet.Cost), new(developer[i]), new(other[i]), new(supplies[i]))
        {
            IsComplete = sheet.Line.IsPriced && session.IsPriced && session.Baths.All(bath => bath.Share.IsPriced),
            Entry = session.Entry, Date = session.Date,
            Process = session.Process, Developing = session.Developing, Bath = session.Bath, Number = sheet.Line.Number,
        });
    }

    private static void Add(long[] parts, long[] to)
    {
        for (var i = 0; i < parts.Length; i++)
            to[i] += parts[i];
    }

    private static IEnumerable<(FilmUse Line, long Area, long Cost)> EachSheet(FilmUse line)
    {
        var costs = Share.Split(line.Cost.Millionths, new long[line.Sheets]);
        return costs.Select(cost => (line, line.Area.Hundredths / line.Sheets, cost));
    }
}
