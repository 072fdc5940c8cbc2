namespace Ledger.App.Tests;

/// <summary>A file that a spreadsheet opened and saved again adds nothing, and says what it says otherwise.</summary>
public sealed class SpreadsheetTests
{
    private const string Items = "date,item,name,kind,format,pack\n2026-01-01,pan100,A pan film,film,4x5,25 sheets\n";

    private const string Deliveries = """
        date,item,packs,price,discount,shipping,batch,reference,note
        2026-01-05,pan100,2,186.50,,,AB-12,,
        2026-02-05,pan100,1,93.25,,,AB-13,inv-7,first order
        2026-03-05,pan100,1,,,,AB-14,,
        """;

    [Theory]
    [InlineData("as it was", Deliveries)]
    [InlineData("figures cut and zeros filled in", """
        date,item,packs,price,discount,shipping,batch,reference,note
        2026-01-05,PAN100,2,186.5,0,0,AB-12,,
        2026-02-05,PAN100,1,93.25,0,0,AB-13,inv-7,first order
        2026-03-05,PAN100,1,,0,0,AB-14,,
        """)]
    [InlineData("by a German spreadsheet", """
        date;item;packs;price;discount;shipping;batch;reference;note
        05.01.2026;pan100;2;186,50;;;AB-12;;
        05.02.2026;pan100;1;93,25;0;0,00;AB-13;inv-7;first order
        5.3.2026;pan100;1;;;;AB-14;;
        """)]
    public void A_file_saved_again_adds_nothing(string how, string saved)
    {
        using var room = Started();
        var shelf = room.Do("show", "shelf", "--json");
        var ran = room.Run("import", "deliveries", room.Write("saved.csv", saved));
        Assert.True(ran.Out.StartsWith("0 entries recorded, 3 already there", StringComparison.Ordinal),
            $"{how}: {ran.Out}{ran.Error}");
        Assert.Equal((0, ""), (ran.Status, ran.Error));
        Assert.Equal(shelf, room.Do("show", "shelf", "--json"));
    }

    [Fact]
    public void A_German_file_is_read_where_all_of_it_is_written_so()
    {
        using var room = Started();
        room.Do("import", "deliveries", room.Write(
            "more.csv",
            "date;item;packs;price;anyway\n07.03.2026;pan100;1;1.500,00;yes\n08.03.2026;pan100;1;1,500;yes\n"));
        var prices = room.Run("show", "prices", "pan100", "--json").Json.GetProperty("prices").EnumerateArray()
            .Select(price => (price.GetProperty("date").GetString(), price.GetProperty("cost").ToString()))
            .TakeLast(2).ToList();
        Assert.Equal(["2026-03-07", "2026-03-08"], prices.Select(price => price.Item1));
        Assert.Contains("1500.000000", prices[0].Item2, StringComparison.Ordinal);
        Assert.Contains("1.500000", prices[1].Item2, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_written_in_two_ways_is_refused_row_by_row_with_what_stands_there()
    {
        using var room = Started();
        var ran = room.Run("import", "deliveries", room.Write(
            "mixed.csv",
            "date;item;packs;price\n2026-03-07;pan100;1;93.25\n08.03.2026;pan100;1;1,50\n09.03.2026;pan100;x;1\n"));
        Assert.Equal(ExitStatus.Refused, ran.Status);
        Assert.Contains("line 3, date: found \"08.03.2026\"", ran.Error, StringComparison.Ordinal);
        Assert.Contains("line 4, date: found \"09.03.2026\"", ran.Error, StringComparison.Ordinal);
        Assert.Contains("line 4, packs: found \"x\"", ran.Error, StringComparison.Ordinal);
        Assert.Contains("2 rows must be mended", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_row_with_other_values_is_told_and_amends_only_where_that_is_asked_for()
    {
        using var room = Started();
        var changed = room.Write("changed.csv", Deliveries.Replace("93.25", "90", StringComparison.Ordinal)
            .Replace("first order", "second order", StringComparison.Ordinal));
        var ran = room.Run("import", "deliveries", changed);
        Assert.Equal(0, ran.Status);
        Assert.Equal("0 entries recorded, 2 already there, 1 with other values left as they stand\n", ran.Out);
        Assert.Contains("line 3: entry", ran.Error, StringComparison.Ordinal);
        Assert.Contains("price is 93.25 there and 90 here", ran.Error, StringComparison.Ordinal);
        Assert.Contains("note is first order there and second order here", ran.Error, StringComparison.Ordinal);
        Assert.Contains("93.250000", room.Do("show", "prices", "--json"), StringComparison.Ordinal);

        var json = room.Run("import", "deliveries", changed, "--json").Json;
        Assert.Equal((0, 2, 1, 0),
            (Count(json, "recorded"), Count(json, "alreadyThere"), Count(json, "changed"), Count(json, "amended")));

        Assert.Equal("0 entries would be recorded, 2 already there, 1 would be amended\n",
            room.Do("import", "deliveries", changed, "--amend", "--dry-run"));
        Assert.Equal("0 entries recorded, 2 already there, 1 amended\n",
            room.Do("import", "deliveries", changed, "--amend"));
        Assert.Contains("90.000000", room.Do("show", "prices", "--json"), StringComparison.Ordinal);
        Assert.Equal("0 entries recorded, 3 already there\n", room.Do("import", "deliveries", changed));
        Assert.Equal("0 entries recorded, 3 already there\n",
            room.Do("import", "deliveries", room.PathOf("deliveries.csv")));
        room.Do("check");
    }

    [Fact]
    public void A_price_that_became_0_is_told_and_does_not_double_the_stock()
    {
        using var room = Started();
        var ran = room.Run("import", "deliveries", room.Write(
            "zero.csv", Deliveries.Replace("2026-03-05,pan100,1,,", "2026-03-05,pan100,1,0,",
                StringComparison.Ordinal)));
        Assert.Equal("0 entries recorded, 2 already there, 1 with other values left as they stand\n", ran.Out);
        Assert.Contains("price is not said there and 0 here", ran.Error, StringComparison.Ordinal);
    }

    /// <summary>What a row leaves empty it does not deny; a dash says that nothing is to stand there.</summary>
    [Fact]
    public void A_dash_in_a_cell_clears_what_stood_there_and_an_empty_cell_leaves_it()
    {
        using var room = Started();
        var empty = room.Write("empty.csv",
            Deliveries.Replace("AB-13,inv-7,first order", ",inv-7,", StringComparison.Ordinal));
        Assert.Equal("0 entries recorded, 3 already there\n", room.Do("import", "deliveries", empty, "--amend"));
        var dash = room.Write("dash.csv",
            Deliveries.Replace("AB-13,inv-7,first order", "-,inv-7,-", StringComparison.Ordinal));
        var told = room.Run("import", "deliveries", dash);
        Assert.Equal("0 entries recorded, 2 already there, 1 with other values left as they stand\n", told.Out);
        Assert.Contains("note is first order there and not said here", told.Error.ReplaceLineEndings(" "),
            StringComparison.Ordinal);
        Assert.Contains("batch is AB-13 there and not said here", told.Error.ReplaceLineEndings(" "),
            StringComparison.Ordinal);
        Assert.Equal("0 entries recorded, 2 already there, 1 amended\n",
            room.Do("import", "deliveries", dash, "--amend"));
        room.Do("export", room.PathOf("out"));
        var lots = File.ReadAllText(room.PathOf("out/lot.csv"));
        Assert.Contains("AB-12", lots, StringComparison.Ordinal);
        Assert.DoesNotContain("AB-13", lots, StringComparison.Ordinal);
        Assert.Equal("0 entries recorded, 3 already there\n", room.Do("import", "deliveries", dash, "--amend"));
        room.Do("check");
    }

    [Fact]
    public void A_dash_where_something_must_be_said_is_refused_and_in_a_German_file_it_is_nothing_too()
    {
        using var room = Started();
        var needed = room.Run("import", "deliveries", room.Write(
            "needed.csv", Deliveries.Replace("2026-02-05,pan100", "-,pan100", StringComparison.Ordinal)), "--amend");
        Assert.Equal(ExitStatus.Refused, needed.Status);
        Assert.Contains("line 3, date: found \"-\"", needed.Error, StringComparison.Ordinal);
        Assert.Equal("0 entries recorded, 0 already there, 1 amended\n", room.Do("import", "deliveries", room.Write(
            "german.csv", "date;item;packs;price;expires;reference\n05.02.2026;pan100;1;90,50;-;inv-7\n"), "--amend"));
    }

    [Fact]
    public void The_demo_year_imported_again_says_nothing_otherwise()
    {
        using var room = new Darkroom();
        room.Do("import", "all", SampleData.Folder);
        var ran = room.Run("import", "all", SampleData.Folder);
        Assert.StartsWith("0 entries recorded, ", ran.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("something else", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("other values", ran.Out, StringComparison.Ordinal);
    }

    private static int Count(System.Text.Json.JsonElement json, string name) => json.GetProperty(name).GetInt32();

    private static Darkroom Started()
    {
        var room = new Darkroom();
        room.Do("record", "setting", "currency", "EUR");
        room.Do("import", "items", room.Write("items.csv", Items));
        room.Do("import", "deliveries", room.Write("deliveries.csv", Deliveries));
        return room;
    }
}
