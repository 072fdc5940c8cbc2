using Ledger.Exchange.Tests.Support;

namespace Ledger.Exchange.Tests.Import;

public class IdentityTests
{
    private const string Row = "date,item,packs,price\n2025-05-12,pan,1,2.50\n";

    [Fact]
    public void ARowIsItsOwnIdentityHoweverTheFileIsWritten()
    {
        var key = Assert.Single(Keys("deliveries", Row));
        Assert.StartsWith("deliveries:#", key, StringComparison.Ordinal);
        Assert.Equal(key, Assert.Single(Keys("deliveries", "PRICE;packs;batch;item;date;colour\r\n\"2.50\"; 1 ;;pan;2025-05-12;red\r\n")));
        Assert.NotEqual(key, Assert.Single(Keys("deliveries", "date,item,packs,price\n2025-05-12,pan,1,2.51\n")));
    }

    [Fact]
    public void MovingAFileInTimeKeepsItsIdentities() =>
        Assert.Equal(
            Keys("deliveries", Row),
            Csv.Read("deliveries", Row, date => date.PlusDays(400)).Entries.Select(entry => entry.Entry.Key));

    [Fact]
    public void RowsThatRepeatAreToldApartByTheirNumber()
    {
        var keys = Keys("deliveries", Row + "2025-05-12,pan,1,2.50\n2025-05-12,pan,2,2.50\n2025-05-12,pan,1,2.50\n");
        Assert.Equal(4, keys.Distinct().Count());
        Assert.Equal([keys[0], keys[0] + "-2", keys[0] + "-3"], [keys[0], keys[1], keys[3]]);
    }

    [Fact]
    public void AReferenceIsTheIdentityAndStandsOnceUnlessItsRowsAreOneDelivery()
    {
        Assert.Equal(["deliveries:A-1"], Keys("deliveries", "date,item,packs,reference\n2025-05-12,pan,1,A-1\n"));
        Assert.Equal(
            "line 3, reference: found \"A-1\"; accepted is a reference of its own for each entry; line 2 has this one",
            Csv.Problem("counts", "date,item,found,reason,reference\n2025-05-12,pan,1,lost,A-1\n2025-05-12,pan,2,lost,A-1\n").ToString());
        Assert.Equal(["deliveries:A-1"], Keys("deliveries", "date,item,packs,reference\n2025-05-12,pan,1,A-1\n2025-05-12,stop,2,A-1\n"));
    }

    [Fact]
    public void AChangedItemOrProcessIsANewDefinition()
    {
        var item = Assert.Single(Keys("items", "item,name,kind,format,pack\npan,Pan,film,8x10,25\n"));
        Assert.StartsWith("items:pan#", item, StringComparison.Ordinal);
        Assert.NotEqual(item, Assert.Single(Keys("items", "item,name,kind,format,pack\npan,Pan,film,8x10,50\n")));
        const string process = "process,step,role,minutes\nfilm,1,developer,11\nfilm,2,stop,1\n";
        var key = Assert.Single(Keys("processes", process));
        Assert.StartsWith("processes:film#", key, StringComparison.Ordinal);
        Assert.Equal(key, Assert.Single(Keys("processes", process)));
        Assert.NotEqual(key, Assert.Single(Keys("processes", process.Replace("stop,1", "stop,2", StringComparison.Ordinal))));
    }

    private static List<string> Keys(string kind, string text)
    {
        var file = Csv.Read(kind, text);
        Assert.Empty(file.Problems);
        return [.. file.Entries.Select(entry => entry.Entry.Key)];
    }
}
