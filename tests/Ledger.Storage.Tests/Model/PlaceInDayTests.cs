using Ledger.Storage.Upkeep;

namespace Ledger.Storage.Tests.Model;

/// <summary>The order of the entries of a day can be chosen: as they are recorded, and afterwards.</summary>
public sealed class PlaceInDayTests : IDisposable
{
    private readonly TemporaryLedger _file = new();
    private readonly long _discard;

    public PlaceInDayTests()
    {
        Some.Stock(_file);
        _discard = _file.Accept(new Discard { Key = "spent", Date = Some.Day(3, 1), What = "F1",
            Reason = "spent" }).Number;
    }

    public void Dispose() => _file.Dispose();

    [Fact]
    public void What_happened_earlier_in_the_day_is_recorded_before_what_was_recorded_first()
    {
        Assert.Contains("F1", _file.Refuse(Some.Session()).Sentence, StringComparison.Ordinal);
        var session = _file.Accept(Some.Session() with { Before = "spent" });
        Assert.Equal([session.Number, _discard], Day());
        Assert.Equal(320, _file.Ledger.Bath("F1", _file.Ledger.Today)!.Worked.SquareInches);
        InOrder();
    }

    [Fact]
    public void An_entry_is_put_before_another_one_and_back_again()
    {
        var (one, two) = (_file.Accept(Opened()).Number, _file.Accept(Counted(40)).Number);
        Assert.Equal([_discard, one, two], Day());
        var moved = _file.Accept(Moved(two, $"{_discard}"));
        Assert.Equal($"amended entry {two} (earlier in its day): order", moved.Posting.Summary);
        Assert.Equal([two, _discard, one], Day());
        Assert.Equal($"{_discard}", _file.Ledger.Said(two)!.Before);
        InOrder();
        _file.Accept(new Undo { Key = Some.Key(), Date = Some.Day(3, 2), Number = moved.Number, Reason = "no" });
        Assert.Equal([_discard, one, two], Day());
        _file.Accept(Moved(two, $"{one}"));
        _file.Accept(Moved(two, ""));
        Assert.Equal([_discard, one, two], Day());
        InOrder();
    }

    [Fact]
    public void Many_are_put_before_the_same_one_in_the_order_in_which_that_is_said()
    {
        var said = new List<long>();
        for (var i = 0; i < 8; i++)
            said.Add(_file.Accept(Counted(40 - i) with { Before = "spent" }).Number);
        Assert.Equal([.. said, _discard], Day());
        InOrder();
        while (said.Count < 20
            && _file.Ledger.Post(Counted(60 - said.Count) with { Before = "spent" }) is Posted posted)
            said.Add(posted.Number);
        Assert.Equal([.. said, _discard], Day());
        if (said.Count < 20)
            Assert.StartsWith("no place is left right before entry",
                _file.Refuse(Counted(9) with { Before = "spent" }).Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("9999", "there is no entry 9999; `show journal` lists them")]
    [InlineData("nothing", "no entry has the reference \"nothing\"; `show journal --json` lists them")]
    [InlineData("1", "entry 1 is of 2025-01-01, this one of 2025-03-01; an order can be chosen within a day only")]
    public void What_cannot_be_a_place_is_refused(string before, string sentence)
    {
        Assert.Equal(sentence, _file.Refuse(Some.Session() with { Before = before }).Sentence);
        Assert.Equal(sentence, _file.Refuse(Moved(_discard, before)).Sentence);
    }

    [Fact]
    public void Nothing_comes_before_itself_nor_before_an_undo()
    {
        var undo = _file.Accept(new Undo { Key = Some.Key(), Date = Some.Day(3, 2), Number = _discard,
            Reason = "no" }).Number;
        Assert.Contains($"name entry {_discard}", _file.Refuse(Opened() with { Before = $"{undo}" }).Sentence,
            StringComparison.Ordinal);
        var open = _file.Accept(Opened()).Number;
        Assert.Contains("before itself", _file.Refuse(Moved(open, $"{open}")).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_move_that_a_later_entry_cannot_bear_is_refused()
    {
        var session = _file.Accept(Some.Session() with { Before = "spent" }).Number;
        var refusal = _file.Refuse(Moved(_discard, $"{session}"));
        Assert.StartsWith($"entry {session} of 2025-03-01", refusal.Sentence, StringComparison.Ordinal);
        Assert.Equal([session, _discard], Day());
    }

    private static Opening Opened() => new() { Key = Some.Key(), Date = Some.Day(3, 1), Container = "pan" };

    private static StockCount Counted(decimal sheets) => new()
    {
        Key = Some.Key(), Date = Some.Day(3, 1), What = "pan", Found = Quantity.Of(sheets, Unit.Sheet),
        Reason = "counted",
    };

    private static Amendment Moved(long number, string before) => new()
    {
        Key = Some.Key(), Date = Some.Day(3, 2), Number = number, Changes = [new(0, "before", before)],
        Reason = "order",
    };

    private IEnumerable<long> Day() => _file.Ledger.JournalOf(Some.Day(3, 1)).Select(entry => entry.Number);

    /// <summary>
    /// What is kept follows from what was said, and so it does where that is read into an empty ledger.
    /// </summary>
    private void InOrder()
    {
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
        using var other = new TemporaryLedger();
        Assert.Null(other.Ledger.Join(_file.Ledger.SaidLines(), dryRun: false).Refusal);
        Assert.Equal(Rows(_file), Rows(other));
    }

    private static List<string> Rows(TemporaryLedger file) =>
        [.. new Comparison(file.Ledger.Connection).Dump(file.Ledger.Connection)];
}
