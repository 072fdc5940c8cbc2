namespace Ledger.Exchange.Tests.Import;

public class IdentityTests
{
    private const string Row = "date,item,packs,price\n2025-05-12,pan,1,2.50\n";

    [Fact]
    public void A_row_is_its_own_identity_however_the_file_is_written()
    {
        var key = Assert.Single(Keys("deliveries", Row));
        Assert.StartsWith("deliveries:#", key, StringComparison.Ordinal);
        Assert.Equal(key,
            Assert.Single(
                Keys("deliveries", "PRICE;packs;batch;item;date;colour\r\n\"2.50\"; 1 ;;pan;2025-05-12;red\r\n")));
        Assert.NotEqual(key, Assert.Single(Keys("deliveries", "date,item,packs,price\n2025-05-12,pan,1,2.51\n")));
    }

    [Theory]
    [InlineData("deliveries", "date,item,packs,price\n2025-05-12,pan,1.0,2.500\n",
        "date,item,packs,price\n2025-05-12,pan,1,2.5\n")]
    [InlineData("loads", "date,sides,from,anyway\n2025-05-12,\"E01, E02\",pan,no\n",
        "date,sides,from\n2025-05-12,E01 E02,pan\n")]
    [InlineData("counts", "date,item,found,reason\n2025-05-12,syrup,0.5 l,dregs\n",
        "date,item,found,reason\n2025-05-12,syrup,500,dregs\n")]
    [InlineData("baths", "date,bath,item,working_ml,material\n2025-05-12,F1,syrup,1500,Film\n",
        "date,bath,item,working_ml\n2025-05-12,F1,syrup,1500\n")]
    public void The_same_values_are_the_same_identity_however_they_are_written(string kind, string one, string other) =>
        Assert.Equal(Keys(kind, one), Keys(kind, other));

    [Fact]
    public void A_session_is_known_by_its_name_and_a_plan_by_its_name_and_content()
    {
        Assert.Equal(["sessions:S1"], Keys("sessions", "session,date,process,item,sheets\nS1,2025-05-12,film,pan,1\n"));
        Assert.Equal(["prints:P1"], Keys("prints", "session,date,item,sheets\nP1,2025-05-12,pan,1\n"));
        Assert.StartsWith(
            "plans:tarn#", Assert.Single(Keys("plans", "plan,date,on,item,sheets\ntarn,2025-05-12,2025-06-01,pan,1\n")),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Moving_a_file_in_time_keeps_its_identities() =>
        Assert.Equal(
            Keys("deliveries", Row),
            Csv.Read("deliveries", Row, date => date.PlusDays(400)).Entries.Select(entry => entry.Entry.Key));

    [Fact]
    public void Rows_that_repeat_are_told_apart_by_their_number()
    {
        var keys = Keys("deliveries", Row + "2025-05-12,pan,1,2.50\n2025-05-12,pan,2,2.50\n2025-05-12,pan,1,2.50\n");
        Assert.Equal(4, keys.Distinct().Count());
        Assert.Equal([keys[0], keys[0] + "-2", keys[0] + "-3"], [keys[0], keys[1], keys[3]]);
    }

    [Fact]
    public void A_reference_is_the_identity_and_stands_once_unless_its_rows_are_one_delivery()
    {
        Assert.Equal(["deliveries:A-1"], Keys("deliveries", "date,item,packs,reference\n2025-05-12,pan,1,A-1\n"));
        Assert.Equal(
            "line 3, reference: found \"A-1\"; accepted is a reference of its own for each entry; line 2 has this one",
            Csv.Problem("counts",
                "date,item,found,reason,reference\n2025-05-12,pan,1,lost,A-1\n2025-05-12,pan,2,lost,A-1\n").ToString());
        Assert.Equal(["deliveries:A-1"],
            Keys("deliveries", "date,item,packs,reference\n2025-05-12,pan,1,A-1\n2025-05-12,stop,2,A-1\n"));
    }

    [Fact]
    public void A_changed_item_or_process_is_a_new_definition()
    {
        var item = Assert.Single(Keys("items", "item,name,kind,format,pack\npan,Pan,film,8x10,25\n"));
        Assert.StartsWith("items:pan#", item, StringComparison.Ordinal);
        Assert.NotEqual(item, Assert.Single(Keys("items", "item,name,kind,format,pack\npan,Pan,film,8x10,50\n")));
        const string process = "process,step,role,minutes\nfilm,1,developer,11\nfilm,2,stop,1\n";
        var key = Assert.Single(Keys("processes", process));
        Assert.StartsWith("processes:film#", key, StringComparison.Ordinal);
        Assert.Equal(key, Assert.Single(Keys("processes", process)));
        Assert.NotEqual(key,
            Assert.Single(Keys("processes", process.Replace("stop,1", "stop,2", StringComparison.Ordinal))));
    }

    private static List<string> Keys(string kind, string text)
    {
        var file = Csv.Read(kind, text);
        Assert.Empty(file.Problems);
        return [.. file.Entries.Select(entry => entry.Entry.Key)];
    }
}
