namespace Ledger.Storage.Tests;

/// <summary>A ledger may hold a size as "4x5in", written before a size had one spelling only.</summary>
public sealed class FormatSpellingTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public FormatSpellingTests()
    {
        Some.Stock(_file);
        _file.Run("DELETE FROM said_name; DELETE FROM said");
        _file.Run("UPDATE item SET format = '4x5in' WHERE code = 'pan'");
        _file.Run("INSERT INTO film_format (code, unit, area) VALUES ('4x5in', 'sheet', 1225804)");
        _file.Reopen();
    }

    public void Dispose() => _file.Dispose();

    [Fact]
    public void Film_of_an_older_spelling_is_film_of_that_size()
    {
        var holdings = _file.Ledger.HoldingsOn(_file.Ledger.Today);
        Assert.Equal(("4x5", 19m),
            (holdings.Item("pan")!.Format!.Code, holdings.Item("pan")!.Format!.Area.SquareInches));
        _file.Accept(Some.Define(holdings.Item("pan")! with { Name = "Pan, the new box" }));
        _file.Accept(Some.Session("S01", 4));
    }

    [Fact]
    public void What_is_defined_under_the_spelling_of_today_counts()
    {
        _file.Run(
            "DELETE FROM film_format; INSERT INTO film_format (code, unit, area) VALUES ('4x5', 'sheet', 1161288), "
                + "('4x5in', 'sheet', 1225804)");
        _file.Reopen();
        Assert.Equal(18m, AreaOfPan());
        _file.Accept(new FormatDefinition { Key = Some.Key(), Date = Some.Day(2, 1),
            Format = new("4x5in", Area.FromSquareInches(17)) });
        _file.Reopen();
        Assert.Equal(17m, AreaOfPan());
    }

    private decimal AreaOfPan() => _file.Ledger.HoldingsOn(_file.Ledger.Today).Item("pan")!.Format!.Area.SquareInches;
}
