using System.Text;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Tests.Support;

/// <summary>Reads CSV that a test writes down.</summary>
internal static class Csv
{
    public static readonly LocalDate Undated = new(2025, 4, 1);

    public static ImportFile Read(string kind, string text, Func<LocalDate, LocalDate>? shift = null) =>
        Read(kind, Encoding.UTF8.GetBytes(text), shift);

    public static ImportFile Read(string kind, byte[] bytes, Func<LocalDate, LocalDate>? shift = null)
    {
        using var stream = new MemoryStream(bytes);
        return CsvImport.Read(kind, stream, Terms with { Shift = shift ?? ReadingTerms.Unmoved });
    }

    /// <summary>What is known beside a file: pan, syrup and powder.</summary>
    public static ReadingTerms Terms => new() { Today = Undated, ItemOf = ItemOf, Formats = new() };

    /// <summary>The terms of a ledger that holds nothing.</summary>
    public static ReadingTerms Nothing => Terms with { ItemOf = _ => null };

    /// <summary>The only entry of a file without problems.</summary>
    public static T One<T>(string kind, string text)
        where T : Entry
    {
        var file = Read(kind, text);
        Assert.Empty(file.Problems);
        return Assert.IsType<T>(Assert.Single(file.Entries).Entry);
    }

    /// <summary>The only problem of a file.</summary>
    public static RowProblem Problem(string kind, string text) => Assert.Single(Read(kind, text).Problems);

    private static Item? ItemOf(string code) => code switch
    {
        "pan" => Some("pan", Unit.Sheet),
        "syrup" => Some("syrup", Unit.Millilitre),
        "powder" => Some("powder", Unit.Gram),
        _ => null,
    };

    private static Item Some(string code, Unit unit) =>
        new() { Code = code, Name = code, Kind = ItemKind.Supply, Unit = unit, Pack = Quantity.Of(1, unit) };
}
