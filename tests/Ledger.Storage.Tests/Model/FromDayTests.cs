namespace Ledger.Storage.Tests.Model;

/// <summary>
/// A definition has effect from its day on, or always: then what happened before is worked out under it.
/// </summary>
public sealed class FromDayTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public FromDayTests()
    {
        Some.Stock(_file);
        _file.Accept(Some.Session("S01", 4, month: 3));
        _file.Accept(Some.Define(Some.Film(weight: 1500)) with { Date = Some.Day(4, 1) });
        _file.Accept(Some.Session("S02", 4, month: 5));
    }

    public void Dispose() => _file.Dispose();

    [Fact]
    public void A_factor_that_was_so_always_counts_in_the_sessions_of_the_past()
    {
        Assert.Equal(320 + 480, Weighted());
        var said = _file.Accept(Some.Define(Some.Film(weight: 2000)) with { Date = Some.Day(6, 1),
            IsForAlways = true });
        Assert.Equal(640 + 640, Weighted());
        Assert.Equal(2000, _file.Ledger.HoldingsOn(Some.Day(2, 1)).Item("pan")!.FixerFactorThousandths);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
        _file.Accept(Some.Define(Some.Film(weight: 1000)) with { Date = Some.Day(4, 15) });
        Assert.Equal(640 + 320, Weighted());
        _file.Accept(new Undo { Key = Some.Key(), Date = Some.Day(6, 2), Number = said.Number, Reason = "no" });
        Assert.Equal(320 + 320, Weighted());
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void A_definition_is_put_right_to_be_so_always_and_from_another_day()
    {
        var second = _file.Ledger.Journal(_file.Ledger.Today, null, 50).First(entry => entry.Kind == "item");
        Amend(second.Number, "from_day", "2025-06-01");
        Assert.Equal(320 + 320, Weighted());
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
        Amend(second.Number, "from_day", "always");
        Assert.Equal(480 + 480, Weighted());
        Amend(second.Number, "from_day", "2025-02-01");
        Assert.Equal(480 + 480, Weighted());
        Assert.Equal(1000, _file.Ledger.HoldingsOn(Some.Day(1, 20)).Item("pan")!.FixerFactorThousandths);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void A_setting_is_said_to_have_been_so_always()
    {
        _file.Accept(Set("rotation-ceiling", "3") with { Date = Some.Day(4, 1) });
        _file.Accept(Set("rotation-ceiling", "5") with { Date = Some.Day(6, 1), IsForAlways = true });
        Assert.Equal(5, _file.Ledger.HoldingsOn(Some.Day(1, 20)).Settings.RotationCeiling);
        Assert.Equal(5, _file.Ledger.HoldingsOn(Some.Day(5, 1)).Settings.RotationCeiling);
        _file.Accept(Set("rotation-ceiling", "4") with { Date = Some.Day(7, 1) });
        Assert.Equal(5, _file.Ledger.HoldingsOn(Some.Day(6, 20)).Settings.RotationCeiling);
        Assert.Equal(4, _file.Ledger.HoldingsOn(Some.Day(7, 20)).Settings.RotationCeiling);
    }

    [Theory]
    [InlineData("always", true, "2026-03-15")]
    [InlineData("today", false, "2026-03-15")]
    [InlineData("2025-02-01", false, "2025-02-01")]
    [InlineData("yesterday", false, "2026-03-14")]
    public void A_day_is_read_as_it_is_typed(string from, bool isAlways, string date)
    {
        var kind = EntryKinds.Named("setting")!;
        var text = new EntryText { [kind.Fields[0]] = "warn-days", [kind.Fields[1]] = "40",
            [CommonFields.FromDay] = from };
        var entry = EntryReading.Read(kind, text,
            ReadingTerms.Typed(_file.Ledger.HoldingsOn(_file.Ledger.Today), _file.Ledger.Today)).Entry!;
        Assert.Equal((isAlways, date), (((Definition)entry).IsForAlways, Core.Measures.Dates.Text(entry.Date)));
    }

    private static SettingChange Set(string name, string value) =>
        new() { Key = Some.Key(), Date = Some.Day(6, 1), Setting = name, Value = value };

    private void Amend(long number, string field, string value) => _file.Accept(new Amendment
    {
        Key = Some.Key(), Date = Some.Day(6, 2), Number = number, Changes = [new(0, field, value)],
        Reason = "found out",
    });

    private decimal Weighted() => _file.Ledger.Bath("F1", _file.Ledger.Today)!.WorkedWeighted.SquareInches;
}
