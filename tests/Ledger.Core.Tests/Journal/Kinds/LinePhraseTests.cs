namespace Ledger.Core.Tests.Journal.Kinds;

/// <summary>A line of an entry as somebody types it, and as it is written back.</summary>
public class LinePhraseTests
{
    [Theory]
    [InlineData("4 fen80", 4, "fen80", "", Fate.Negative, null, null, "")]
    [InlineData("4 fen80 N", 4, "fen80", "N", Fate.Negative, null, null, "")]
    [InlineData("2 fen80 N-1 reject: dust", 2, "fen80", "N-1", Fate.Reject, null, null, "dust")]
    [InlineData("6  reed400 Keeper 12.5ml from reed400/3", 6, "reed400", "", Fate.Keeper, 12500L, "reed400/3", "")]
    [InlineData("4 ortho16 group test test 0.025l : at 1:2", 4, "ortho16", "test", Fate.Test, 25000L, null, "at 1:2")]
    [InlineData("4 fen80 from fen80/3 25 ml N", 4, "fen80", "N", Fate.Negative, 25000L, "fen80/3", "")]
    public void Sheets_are_read_word_by_word(
        string text, int sheets, string item, string group, Fate fate, long? developer, string? box, string note) =>
        Assert.Equal(
            new SessionLine
            {
                Sheets = sheets, Item = item, Group = group, Fate = fate, Container = box, Note = note,
                Developer = developer is { } microlitres ? Volume.FromMicrolitres(microlitres) : null,
            },
            Line("session", text));

    [Theory]
    [InlineData("session", "four fen80")]
    [InlineData("session", "4")]
    [InlineData("session", "4 fen80 N N-1 N+1")]
    [InlineData("process", "rinse for 5")]
    [InlineData("process", "developer syrup 1:49")]
    [InlineData("process", "stop citric 30g per week")]
    public void What_cannot_be_read_is_refused(string kind, string text) => Assert.NotEmpty(Problems(kind, text));

    [Fact]
    public void A_step_that_develops_is_read()
    {
        var step = Assert.IsType<ProcessStep>(
            Line("process", "developer syrup 1+49 in 1250 ml for 11 per batch: 9 for N-1"));
        Assert.Equal((ItemRole.Developer, "syrup", "1+49"), (step.Role, step.Item, step.Dilution?.Text));
        Assert.Equal((1250m, 11m, StepPer.Batch, StepUse.OneShot),
            (step.WorkingVolume?.Millilitres, step.Minutes, step.Per, step.Use));
        Assert.Equal("9 for N-1", step.Note);
    }

    [Theory]
    [InlineData("session", "4 fen80 N")]
    [InlineData("session", "1 fen80 reject loaded backwards group N-1 from E01-1, E02-1 : the mill")]
    [InlineData("session", "4 fen80 weighed 31.25 g group N")]
    [InlineData("process", "wash aid rinsal 30 g in 1500 for 2")]
    [InlineData("plan", "8 fen80 group N in E04 from #12, #14 : mill race")]
    [InlineData("delivery", "2 fen80 at 186 batch CP-3260 expires 2028-01-31 in freezer")]
    [InlineData("decanting", "4 of 250 with 64")]
    public void A_line_that_is_written_is_read_as_the_same(string kind, string text)
    {
        var line = Line(kind, text);
        var written = LinePhrase.Write(KindOf(kind), EntryWriting.Line(KindOf(kind), line, Said.Terms));
        Assert.Equal(EntryWholeText(kind, line), EntryWholeText(kind, Line(kind, written)));
    }

    private static string EntryWholeText(string kind, object line)
    {
        var text = EntryWriting.Line(KindOf(kind), line, Said.Terms);
        return string.Join('|', KindOf(kind).Fields.Select(field => $"{field.Name}={text[field]}"));
    }

    private static LineKind KindOf(string kind) => EntryKinds.Named(kind)!.Line!;

    private static object Line(string kind, string text)
    {
        var problems = new List<FieldProblem>();
        var line = EntryReading.Line(KindOf(kind), LinePhrase.Read(KindOf(kind), text, Said.Terms, problems),
            Said.Terms, problems);
        Assert.Empty(problems);
        return line!;
    }

    private static List<FieldProblem> Problems(string kind, string text)
    {
        var problems = new List<FieldProblem>();
        EntryReading.Line(KindOf(kind), LinePhrase.Read(KindOf(kind), text, Said.Terms, problems),
            Said.Terms, problems);
        return problems;
    }
}
