namespace Ledger.Published.Tests;

/// <summary>The developer a batch needs by its area.</summary>
public sealed class DeveloperTests
{
    /// <summary>
    /// 6 ml of a syrup per 80 sq in, and that the need grows with the units in the batch: common practice, no source.
    /// </summary>
    private const string Batches = """
        format | sheets | minimum ml per 80 sq in | dilution | working ml | by dilution ml | by area ml | needed ml
        8x10   | 1      | 6                       | 1+49     | 1250       | 25             | 6          | 25
        8x10   | 4      | 6                       | 1+49     | 1250       | 25             | 24         | 25
        8x10   | 4      | 6                       | 1+99     | 1250       | 12.5           | 24         | 24
        4x5    | 4      | 6                       | 1+99     | 500        | 5              | 6          | 6
        4x5    | 16     | 6                       | 1+99     | 500        | 5              | 24         | 24
        120    | 4      | 6                       | 1+49     | 1000       | 20             | 24         | 24
        """;

    [Fact]
    public void A_batch_needs_the_larger_of_dilution_and_area() => Assert.All(Table.Read(Batches), row =>
    {
        var dilution = Dilution.Parse(row["dilution"]);
        var need = DeveloperNeed.Of(
            dilution,
            Volume.FromMillilitres(row.Number("working ml")),
            Volume.FromMillilitres(row.Number("minimum ml per 80 sq in")),
            Format.Parse(row["format"]).Area * row.Count("sheets"));
        Assert.Equal(row.Number("by dilution ml"), need.ByDilution.Millilitres);
        Assert.Equal(row.Number("by area ml"), need.ByArea.Millilitres);
        Assert.Equal(row.Number("needed ml"), need.Concentrate.Millilitres);
        Assert.Equal(need.ByArea, dilution.SourceIn(need.CureVolume(dilution)));
    });
}
