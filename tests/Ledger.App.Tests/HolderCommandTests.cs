namespace Ledger.App.Tests;

/// <summary>A sheet's way through the commands, and what is asked about.</summary>
public class HolderCommandTests
{
    [Fact]
    public void A_sheet_goes_from_its_box_to_its_negative_number()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "cleaning", "E05", "--bagged");
        Assert.Matches(@"\n  E05-1 +empty +-> +fen80\n", room.Do("record", "load", "E05", "--from", "fen80"));
        room.Do("record", "exposure", "E05-1", "--group", "N-1", "--subject", "mill at noon");
        Assert.Matches(@"\n  fen80 N-1 +0 sheets +-> +1 sheet\n", room.Do("record", "unload", "E05-1"));
        var session = room.Run(
            "record", "session", "S23", "--process", "film", "--sheets", "1 fen80 N-1 from exposed N-1",
            "1 fen80 dummy", "1 fen80 N reject loaded backwards from E01-1: turned");
        Assert.Equal(0, session.Status);
        Assert.Contains("take off its paper label", session.Error, StringComparison.Ordinal);

        var story = room.Run("show", "sheet", "E05-1", "--json").Json;
        Assert.Equal("mill at noon", story.GetProperty("subject").GetString());
        var negative = story.GetProperty("negative").GetString()!;
        Assert.Matches(@"^2026-\d{3}$", negative);
        Assert.Contains("mill at noon", room.Do("show", "sheet", negative), StringComparison.Ordinal);
        room.Do("record", "keeper", negative);
        Assert.Equal("keeper", room.Run("show", "sheet", negative, "--json").Json.GetProperty("fate").GetString());
        Assert.Equal("loaded backwards",
            room.Run("show", "sheet", "E01-1", "--json").Json.GetProperty("cause").GetString());
        Assert.True(room.Run("check", "--json").Json.GetProperty("ok").GetBoolean());
    }

    [Fact]
    public void What_cannot_be_is_refused_and_what_is_unlikely_is_asked_about()
    {
        using var room = Darkroom.WithDemoYear();
        Refused(room, "E01-1 holds a sheet of fen80", "record", "load", "E01-1", "--from", "fen80");
        Refused(room, "E05-1 is empty", "record", "unload", "E05-1");
        Refused(room, "E05-1 is empty", "record", "exposure", "E05-1");
        Refused(room, "--anyway", "record", "load", "E05-1", "--from", "reed400");
        Refused(room, "light leak along the hinge", "record", "load", "E07-2", "--from", "fen80");
        Refused(room, "double exposure", "record", "exposure", "E01-1");
        Assert.Equal(0, room.Run("record", "exposure", "E01-1", "--anyway").Status);
    }

    [Fact]
    public void A_plain_number_of_what_a_holder_holds_is_sheets()
    {
        using var room = Darkroom.WithDemoYear();
        Assert.Contains("counted E08: 0 sheets", room.Do("record", "count", "E08", "0", "--reason", "lost"),
            StringComparison.Ordinal);
        Assert.Contains("discarded 1 sheet of E01-1", room.Do("record", "discard", "E01-1", "1", "--reason", "fogged"),
            StringComparison.Ordinal);
    }

    [Fact]
    public void The_grid_of_holders_says_everything_in_words()
    {
        using var room = Darkroom.WithDemoYear();
        var text = room.Do("show", "holders");
        Assert.Matches(@"E08 +8x10 +1 loaded fen80 85 d +2 loaded fen80 85 d", text);
        Assert.Matches(@"E08-1 +longer than 60 days", text);
        Assert.Matches(@"E07 +8x10 +1 empty +2 out", text);
        Assert.Matches(@"E07-2 +light leak along the hinge; spoiled 1 fogged", text);
        Assert.Matches(@"E02 +8x10 +1 exposed fen80 N 4 d +2 exposed fen80 N-1 3 d", text);
        Assert.DoesNotMatch(@"exposed box", text);
        Assert.Equal(20, room.Run("show", "holders", "--json").Json.GetProperty("holders").GetArrayLength());
    }

    [Fact]
    public void A_box_out_of_the_freezer_says_when_it_may_be_opened()
    {
        using var room = Darkroom.WithDemoYear();
        var moved = room.Run("record", "storage", "fen80/7", "--to", "shelf");
        Assert.Contains("closed for 24 hours, until 2026-03-16 at the earliest", moved.Error, StringComparison.Ordinal);
        room.Do("record", "exposure-index", "fen80/7", "64");
        var box = room.Run("show", "item", "fen80", "--json").Json.GetProperty("containers")[1];
        Assert.Equal(("shelf", "2026-03-16", 64), (
            box.GetProperty("storage").GetString(), box.GetProperty("opensFrom").GetString(),
            box.GetProperty("exposureIndex").GetInt32()));
    }

    [Fact]
    public void A_format_of_ones_own_has_an_area_in_either_unit_and_serves_items_and_holders()
    {
        using var room = Darkroom.WithDemoYear();
        Assert.Matches(@"a roll of 120 +80 sq in +-> +76 sq in",
            room.Do("record", "format", "120", "--area", "490.3216 cm2"));
        room.Do("record", "format", "postcard", "--area", "134.75 cm2");
        room.Do("record", "item", "card", "--kind", "film", "--format", "postcard", "--pack", "25");
        room.Do("record", "holder", "P01", "--format", "Postcard");
        Assert.Matches(@"postcard +sheets +20\.8863 +134\.75 +0\.2611 +your own", room.Do("show", "formats"));
        Assert.Matches(@"120 +rolls +76 +490\.3216 +0\.95 +your own", room.Do("show", "formats"));
        var shown = room.Run("show", "formats", "--json").Json.GetProperty("formats").EnumerateArray()
            .Single(format => format.GetProperty("format").GetString() == "120");
        Assert.Equal((76m, "roll", true), (
            shown.GetProperty("areaSqIn").GetDecimal(), shown.GetProperty("unit").GetString(),
            shown.GetProperty("isOwn").GetBoolean()));
        Refused(room, "120 is counted in rolls", "import", "formats",
            room.Write("formats.csv", "format,area,unit\n120,80 sqin,sheet\n"));
        Assert.Equal(2, room.Run("record", "item", "other", "--kind", "film", "--format", "letter",
            "--pack", "25").Status);
        Assert.True(room.Run("check", "--json").Json.GetProperty("ok").GetBoolean());
    }

    private static void Refused(Darkroom room, string because, params string[] command)
    {
        var ran = room.Run(command);
        Assert.Equal(3, ran.Status);
        Assert.Contains(because, ran.Error, StringComparison.Ordinal);
    }
}
