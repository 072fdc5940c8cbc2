namespace Ledger.App.Tests;

/// <summary>Labels on ready-cut sheets, and the seals of film boxes, as they are asked for.</summary>
public sealed class LabelCommandTests : IDisposable
{
    private readonly Darkroom _room = Darkroom.WithDemoYear();

    [Theory]
    [InlineData("fen80 N")]
    [InlineData("fen80 --unexposed --sheets 25")]
    [InlineData("fen80/6")]
    public void Every_box_of_film_is_sealed_for_total_darkness(string what) => Assert.Contains(
        "OPEN IN TOTAL DARKNESS ONLY", _room.Do(["print", "box-label", .. what.Split(' ')]), StringComparison.Ordinal);

    [Fact]
    public void A_bottle_label_of_a_film_box_is_its_seal_too() => Assert.Contains(
        "OPEN IN TOTAL DARKNESS ONLY", _room.Do("print", "bottle-label", "fen80/6"), StringComparison.Ordinal);

    [Fact]
    public void A_grid_is_laid_on_its_paper()
    {
        var html = _room.Do("print", "bottle-label", "syrup", "--paper", "A4", "--grid", "2x4", "--html", "-");
        Assert.Contains("size: 210mm 297mm", html, StringComparison.Ordinal);
        Assert.Contains("repeat(2, 99.1mm);", html, StringComparison.Ordinal);
        var own = _room.Do(
            "print", "sleeve-labels", "S22", "--paper", "letter", "--grid", "4x8", "--margins", "0.5in 0.25in",
            "--gaps", "1 0", "--html", "-");
        Assert.Contains("padding: 12.7mm 6.35mm 0;", own, StringComparison.Ordinal);
        Assert.Contains("column-gap: 1mm", own, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("say both paper and grid, such as --paper a4 --grid 3x8", "--grid", "3x8")]
    [InlineData("say both paper and grid, such as --paper a4 --grid 3x8", "--paper", "a4")]
    [InlineData("TOP and SIDE in mm (--margins", "--paper", "a4", "--grid", "4x9")]
    [InlineData("have no room on A4", "--paper", "a4", "--grid", "2x4", "--margins", "150")]
    [InlineData("is not a grid", "--paper", "a4", "--grid", "0x4")]
    [InlineData("is not a pair of lengths", "--paper", "a4", "--grid", "2x4", "--margins", "1 2 3")]
    [InlineData("is not a pair of lengths", "--paper", "a4", "--grid", "2x4", "--margins", "-1")]
    [InlineData("is not a paper", "--paper", "a7", "--grid", "2x4")]
    [InlineData("cautions are not printed below 9 point", "--paper", "letter", "--grid", "3x10")]
    [InlineData("8 labels gone: a sheet has 8 labels", "--paper", "a4", "--grid", "2x4", "--skip", "8")]
    public void What_cannot_be_laid_out_is_refused_and_no_file_is_made(string said, params string[] options)
    {
        var ran = _room.Run(["print", "bottle-label", "F4", "--html", _room.PathOf("no.html"), .. options]);
        Assert.NotEqual(0, ran.Status);
        Assert.Contains(said, ran.Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.False(File.Exists(_room.PathOf("no.html")));
    }

    [Theory]
    [InlineData("a development group is for exposed sheets", "fen80/6", "N+1")]
    [InlineData("what fen80/6 holds is in the ledger", "fen80/6", "--sheets", "3")]
    [InlineData("no film and no box of film is called", "syrup/5")]
    public void A_seal_that_contradicts_its_box_is_refused(string said, params string[] what)
    {
        var ran = _room.Run(["print", "box-label", .. what]);
        Assert.NotEqual(0, ran.Status);
        Assert.Contains(said, ran.Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    public void Dispose() => _room.Dispose();
}
