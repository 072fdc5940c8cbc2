namespace Ledger.Core.Tests.Planning;

/// <summary>
/// The last session once more: batch by batch, with its doses and baths, and sheets that wait before film out of a box.
/// </summary>
public sealed class SessionAgainTests
{
    private static readonly SessionRecord Record = new(
        9, "S9", Some.Today, "pm", "F1", Volume.FromMillilitres(80), "",
        [
            new("fen80", 4, Area.FromSquareInches(320), Money.Zero, "N", Fate.Negative, ""),
            new("fen80", 4, Area.FromSquareInches(320), Money.Zero, "N+1", Fate.Negative, ""),
        ]);

    private static readonly SessionLog Said = new()
    {
        Key = "k", Date = Some.Today, Session = "S9", Process = "pm", Bath = "F1",
        Lines =
        [
            new() { Item = "fen80", Sheets = 3, Group = "N", Developer = Volume.FromMillilitres(40),
                Fate = Fate.Keeper },
            new() { Item = "fen80", Sheets = 1, Group = "N", Fate = Fate.Reject },
            new() { Item = "fen80", Sheets = 3, Group = "N+1", Developer = Volume.FromMillilitres(20),
                OtherParts = [Volume.FromMillilitres(5)] },
            new() { Item = "fen80", Sheets = 1, Group = "N+1", Developer = Volume.FromMillilitres(20) },
            new() { Item = "fen80", Sheets = 1, Fate = Fate.Dummy },
        ],
    };

    [Fact]
    public void Every_batch_has_its_own_dose_again_and_goes_through_the_same_bath()
    {
        var again = SessionAgain.Of(Record, Said, Shelves.WithBath().Holdings);
        Assert.Equal(
            ["4 N 40 ml Negative", "3 N+1 20 ml Negative", "1 N+1 20 ml Negative", "1   Dummy"],
            again.Lines.Select(line => $"{line.Sheets} {line.Group} {line.Developer} {line.Fate}"));
        Assert.Equal([Volume.FromMillilitres(5)], again.Lines[1].OtherParts);
        Assert.Equal(("pm", "F1"), (again.Process, again.Bath));
    }

    [Fact]
    public void A_bath_that_is_no_longer_in_use_is_not_named() =>
        Assert.Null(SessionAgain.Of(Record, Said, Shelves.Stocked().Holdings).Bath);

    /// <summary>A file of 0.2.0 kept the developer of a session as a sum: it is shared by area, as before.</summary>
    [Fact]
    public void Of_a_session_whose_words_were_not_kept_the_sum_is_shared_by_area() => Assert.Equal(
        ["4 N 40 ml", "4 N+1 40 ml"],
        SessionAgain.Of(Record, null,
            Shelves.WithBath().Holdings).Lines.Select(line => $"{line.Sheets} {line.Group} {line.Developer}"));

    [Fact]
    public void Sheets_that_wait_are_named_first_and_each_once()
    {
        var ledger = Shelves.WithBath();
        ledger.Post("holder holder=E01 format=8x10");
        ledger.Post("holder holder=E02 format=8x10");
        ledger.Post("load sides=E01-1,E01-2,E02-1 from=fen80/1");
        ledger.Post("exposure sides=E01-1,E01-2,E02-1 group=N");
        var again = WaitingFirst.In(SessionAgain.Of(Record, Said with
        {
            Lines = [Said.Lines[0] with { Sheets = 2 }, Said.Lines[0] with { Sheets = 2 }],
        }, ledger.Holdings), ledger.Holdings);
        Assert.Equal(
            ["2 from E01-1, E01-2 40 ml", "1 from E02-1 40 ml", "1 from  "],
            again.Lines.Select(line => $"{line.Sheets} from {line.From} {line.Developer}"));
        var batch = WaitingFirst.Batch(ledger.Holdings)!;
        Assert.Equal(("fen80", "N", 3, "E01-1, E01-2, E02-1"), (batch.Film, batch.Group, batch.Count, batch.From));
        Assert.Null(WaitingFirst.Batch(Shelves.WithBath().Holdings));
    }
}
