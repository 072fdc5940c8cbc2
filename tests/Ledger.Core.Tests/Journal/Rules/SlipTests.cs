namespace Ledger.Core.Tests.Journal.Rules;

/// <summary>
/// Slips of the hand are asked about, one sentence each, and recorded when the user says that it is so; what is usual
/// is never asked about. The limits are this project's choice.
/// </summary>
public sealed class SlipTests
{
    /// <summary>E01-1 holds a sheet that is exposed for N, E01-2 one that is not.</summary>
    private const string Given = """
        holder holder=E01 date=2026-01-11
        load sides=E01-1,E01-2 date=2026-02-02
        exposure sides=E01-1 date=2026-02-03
        """;

    private const string Asked = """
        entry                                                   | asked
        bath bath=F9 working_ml=1.5                             | bath F9 would be of 1.5 ml
        bath bath=F9 working_ml=100                             | -
        count item=syrup/1 found=1001ml                         | syrup/1 holds 1000 ml when it is full, and 1001 ml were counted
        count item=syrup/1 found=990ml                          | -
        delivery item=fen80 price=180 expires=2026-03-14        | fen80 had expired on 2026-03-14 when it came
        delivery item=fen80 price=180 expires=2026-03-15        | -
        delivery item=fen80 price=1800                          | a sheet of fen80 would cost 72.00
        delivery item=fen80 price=18                            | a sheet of fen80 would cost 0.72
        delivery item=fen80 price=600                           | -
        delivery item=fen80 price=180 storage=freeezer          | nothing is kept in "freeezer" so far, but in "freezer"
        delivery item=fen80 price=180 storage=cellar            | -
        delivery item=fen80 price=180 storage=shelf             | -
        storage to=fridg                                        | nothing is kept in "fridg" so far, but in "fridge"
        storage to=fridge                                       | -
        delivery item=fen80 price=180 date=2025-03-14 typed=yes | 2025-03-14 is more than a year ago
        delivery item=fen80 price=180 date=2025-03-15 typed=yes | -
        delivery item=fen80 price=180 date=2024-03-15           | -
        session session=S9 sheets=1 group=N                     | 1 exposed sheet of fen80 N is waiting, and 1 would be taken out of a box of fresh film instead; name the waiting ones: "from E01-1"
        session session=S9 sheets=1 group=N-1                   | -
        session session=S9 from=E01-1 group=N                   | -
        """;

    [Fact]
    public void What_is_likely_a_slip_is_asked_about_once_and_accepted_when_it_is_so()
    {
        var ledger = Shelves.WithBath();
        ledger.Post("delivery item=fen80 price=180 date=2026-01-09");
        foreach (var entry in Given.Split('\n'))
            ledger.Post(entry.Trim());
        ledger.Post("unload from=E01-2 date=2026-02-05");
        Assert.All(Table.Read(Asked), row =>
        {
            var decision = ledger.Preview(EntryWords.Read(row["entry"]));
            if (row["asked"] == "-")
            {
                Assert.True(decision is Accepted, (decision as Refused)?.Refusal.Sentence);
                return;
            }

            var refusal = Assert.IsType<Refused>(decision).Refusal;
            Assert.Equal(RefusalKind.Doubtful, refusal.Kind);
            Assert.Contains(row["asked"], refusal.Sentence, StringComparison.Ordinal);
            Assert.EndsWith("; if it is so, record it with --anyway", refusal.Sentence, StringComparison.Ordinal);
            var anyway = Assert.IsType<Accepted>(ledger.Preview(EntryWords.Read(row["entry"] + " anyway=yes")));
            Assert.Contains(anyway.Posting.Remarks, remark => remark.Contains(row["asked"], StringComparison.Ordinal));
        });
    }

    [Theory]
    [InlineData("freeezer", "freezer", true)]
    [InlineData("frezeer", "freezer", true)]
    [InlineData("Cellar", "cellar", false)]
    [InlineData("shelf 1", "shelf 2", false)]
    [InlineData("box A", "box B", false)]
    [InlineData("cold room", "darkroom", false)]
    public void A_name_is_near_another_by_a_slip_of_the_fingers(string one, string other, bool isNear)
    {
        Assert.Equal(isNear, Spelling.IsNear(one, other));
        Assert.Equal(isNear, Spelling.IsNear(other, one));
    }
}
