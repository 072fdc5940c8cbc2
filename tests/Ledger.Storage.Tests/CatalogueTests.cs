using static Ledger.Storage.Tests.Support.Holders;

namespace Ledger.Storage.Tests;

/// <summary>
/// Items of which nothing is there and holders in which nothing is are looked up when they are asked for, and are the
/// same as if all had been read at once.
/// </summary>
public sealed class CatalogueTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public CatalogueTests()
    {
        Some.Stock(_file);
        foreach (var item in (string[])["zeta", "alpha_1", "alphab"])
            _file.Accept(Some.Define(Some.Gloves() with { Code = item }));
        foreach (var holder in (string[])["H1", "H2", "Ä3"])
            _file.Accept(Holder(holder));
        _file.Reopen();
    }

    private Holdings Held => _file.Ledger.HoldingsOn(_file.Ledger.Today);

    public void Dispose() => _file.Dispose();

    [Fact]
    public void Of_an_item_that_was_only_defined_nothing_is_read_until_it_is_asked_for()
    {
        var held = Held;
        string[] others = ["zeta", "alpha_1", "alphab"];
        Assert.Empty(held.ItemsInUse.Select(item => item.Code).Intersect(others));
        Assert.Equal("zeta", held.Item(" ZETA ")!.Code);
        Assert.Null(held.Item("zet"));
        Assert.Empty(held.ItemsInUse.Select(item => item.Code).Intersect(others));
        Assert.Equal(held.ItemCodes, held.Items.Select(item => item.Code));
        Assert.Superset(others.ToHashSet(), held.ItemCodes.ToHashSet());
    }

    [Fact]
    public void Items_come_in_one_order_however_they_are_asked_for()
    {
        var all = Held.Items.ToList();
        _file.Reopen();
        var held = Held;
        Assert.Equal(all.Where(item => item.Kind == ItemKind.Supply).Select(Told),
            held.ItemsOf(ItemKind.Supply).Select(Told));
        Assert.Equal(all.Select(item => item.Code), held.ItemCodes);
        Assert.Equal(all.Select(Told), held.ItemCodes.Select(code => Told(held.Item(code)!)));
        Assert.Equal(all.Select(item => held.LastContainerNumber(item.Code)),
            all.Select(item => Held.LastContainerNumber(item.Code)));
        Assert.Equal(["pan"], held.ItemsOf(ItemKind.Film).Select(item => item.Code));

        static string Told(Item item) => $"{item}";
    }

    [Fact]
    public void A_list_of_names_says_of_each_item_what_its_definition_says()
    {
        var names = Held.ItemNames;
        _file.Reopen();
        Assert.Equal(Held.Items.Select(ItemName.Of), names);
    }

    [Fact]
    public void A_minimum_alone_makes_an_item_one_that_needs_to_be_looked_at()
    {
        _file.Accept(Some.Define(Some.Gloves() with { Code = "clips", MinimumOnHand = new(4, Some.Gloves().Unit) }));
        _file.Reopen();
        Assert.Contains("clips", Held.ItemsInUse.Select(item => item.Code));
    }

    [Fact]
    public void A_holder_in_which_nothing_is_is_found_by_its_name_by_a_side_and_by_a_place()
    {
        var held = Held;
        Assert.Empty(held.Film.HoldersInUse);
        Assert.Equal(["H1", "H2", "Ä3"], held.Film.Names.Select(holder => holder.Code));
        Assert.Equal("Ä3", held.Film.Holder("ä3")!.Code);
        Assert.Equal("Ä3-1", held.Film.Side("ä3-1")!.Code);
        var side = held.Film.Side("h2-1")!;
        Assert.Equal("H2-1", side.Code);
        _file.Reopen();
        held = Held;
        Assert.True(held.Film.IsPlace(side.Place));
        Assert.Equal(side.Code, held.Film.Side(side.Place)!.Code);
        Assert.Equal("H1", held.Film.Holder("h1")!.Code);
        Assert.Null(held.Film.Holder("H9"));
        Assert.Null(held.Film.Side("H1-9"));
        Assert.Equal(
            held.Film.Names,
            held.Film.Holders.Select(holder => new HolderName(holder.Code, holder.Format.Code)));
    }

    /// <summary>
    /// A screen keeps its holdings until it is read again; what it asks for until then still gets an answer.
    /// </summary>
    [Fact]
    public void Holdings_that_outlive_their_reading_look_things_up_as_they_stand_then()
    {
        var held = Held;
        using (var other = LedgerFile.Open(_file.FilePath, _file.Clock))
            Assert.IsType<Posted>(other.Post(Some.Define(Some.Gloves() with { Code = "zeta", Name = "New gloves" })));
        Assert.Equal("New gloves", held.Item("zeta")!.Name);
        Assert.Equal("H1", held.Film.Holder("H1")!.Code);
    }

    [Fact]
    public void Within_a_reading_the_catalogue_is_of_the_same_state_as_the_holdings() => _file.Ledger.Read(() =>
    {
        var held = Held;
        using (var other = LedgerFile.Open(_file.FilePath, _file.Clock))
            Assert.IsType<Posted>(other.Post(Some.Define(Some.Gloves() with { Code = "new" })));
        Assert.Null(held.Item("new"));
        Assert.Equal("zeta", held.Item("zeta")!.Code);
        Assert.DoesNotContain("new", held.ItemCodes);
        return true;
    });

    /// <summary>The side is looked up only after the session was written: its spoiled sheet counts once.</summary>
    [Fact]
    public void A_sheet_that_a_side_spoiled_is_counted_once_whenever_its_holder_is_looked_up()
    {
        _file.Accept(Load(Some.Day(3, 1), "H1-1", "H1-2"));
        _file.Accept(Expose(Some.Day(3, 2), "N", "H1-1", "H1-2"));
        _file.Accept(Unload(Some.Day(3, 3), "H1"));
        _file.Reopen();
        var outcome = _file.Ledger.Import(
        [
            Develop(Some.Day(3, 4), "S1", From("pan N", fate: Fate.Reject, cause: RejectCause.Dust)),
            Develop(Some.Day(3, 5), "S2", From("pan N", fate: Fate.Reject, cause: RejectCause.Dust)),
            Load(Some.Day(3, 6), "H2-1"),
        ], dryRun: false, null, default);
        Assert.Equal(3, outcome.Posted);
        var followed = Held.Film.Holders.SelectMany(holder => holder.Sides).ToList();
        _file.Reopen();
        Assert.Equal(followed.Select(Told), Held.Film.Holders.SelectMany(holder => holder.Sides).Select(Told));
        _file.Reopen();
        Assert.Equal(["H1", "H2"], Held.Film.HoldersInUse.Select(holder => holder.Code));

        static string Told(HolderSide side) => $"{side.Code} {side.OwnFaults} {side.LastUsedOn} {side.LastEmptiedOn}";
    }

    /// <summary>
    /// One import looks for the last entry once and follows its own; entry by entry it is looked for each time.
    /// </summary>
    [Fact]
    public void Entries_come_out_alike_whether_they_are_imported_at_once_or_recorded_one_by_one()
    {
        Entry[] entries =
        [
            Some.Session("S1", month: 5),
            Some.Define(Some.Gloves() with { Code = "late" }) with { Date = Some.Day(4, 1) },
            Some.Session("S2", month: 4), Some.Session("S3", month: 6),
            Some.Define(Some.Gloves() with { Code = "late", Name = "Other gloves" }) with { Date = Some.Day(6, 20) },
            Some.Session("S4", month: 6), Some.Session("S5", month: 3),
        ];
        using var other = new TemporaryLedger();
        Some.Stock(other);
        foreach (var entry in entries)
            other.Accept(entry);
        using var atOnce = new TemporaryLedger();
        Some.Stock(atOnce);
        Assert.Empty(atOnce.Ledger.Import(entries, dryRun: false, null, default).Refused);
        Assert.Equal(Told(other), Told(atOnce));
        Assert.Empty(atOnce.Ledger.Check(null, default).Problems);

        static IEnumerable<string> Told(TemporaryLedger ledger) => ledger.Ledger.Journal(ledger.Ledger.Today, null, 100)
            .Select(entry => $"{entry.Date} {entry.Summary}").Order(StringComparer.Ordinal);
    }
}
