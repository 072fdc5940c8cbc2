using System.Text;

namespace Ledger.Exchange.Tests.Import;

public class ImportFolderTests
{
    [Fact]
    public void The_files_become_one_sequence_by_date_and_kind()
    {
        var files = Read(
            ("sessions", "session,date,process,item,sheets\nS1,2025-05-12,film,pan,1\n"),
            ("counts", "date,item,found,reason\n2025-05-13,pan,3,lost\n2025-05-12,syrup,3.5,dregs\n"),
            ("deliveries", "date,item,packs\n2025-05-12,pan,1\n2025-05-11,pan,2\n2025-05-12,pan,3\n"),
            ("items", "item,name,kind,format,unit,pack\npan,Pan,film,8x10,,25\nsyrup,Syrup,chemical,,ml,1000\n"));
        Assert.Empty(files.SelectMany(file => file.Problems));
        Assert.Equal(
            [("items", 2), ("items", 3), ("deliveries", 3), ("deliveries", 2), ("deliveries", 4),
                ("counts", 3), ("sessions", 2), ("counts", 2)],
            ImportFolder.InOrder(files).Select(entry => (entry.Source[..^4], entry.Line)));
    }

    [Fact]
    public void Items_are_known_to_the_other_files_and_stand_on_the_earliest_day()
    {
        var files = Read(
            ("counts", "date,item,found,reason\n2025-05-12,pan,3,lost\n"),
            ("items", "item,name,kind,format,pack\npan,Pan,film,8x10,25\n"));
        Assert.Equal(new(2025, 5, 12), Assert.Single(files[0].Entries).Entry.Date);
        Assert.Equal(Quantity.Of(3, Unit.Sheet),
            Assert.IsType<StockCount>(Assert.Single(files[1].Entries).Entry).Found);
    }

    [Fact]
    public void Items_alone_stand_on_the_day_given() =>
        Assert.Equal(
            new(2026, 1, 1),
            Assert.Single(
                Assert.Single(
                    Read(("items", "item,name,kind,format,pack\npan,Pan,film,8x10,25\n"))).Entries).Entry.Date);

    private static IReadOnlyList<ImportFile> Read(params (string Kind, string Text)[] files) =>
        ImportFolder.Read(
            files.Select(file => (file.Kind, (Stream)new MemoryStream(Encoding.UTF8.GetBytes(file.Text)))),
            Csv.Nothing with { Today = new(2026, 1, 1) });
}
