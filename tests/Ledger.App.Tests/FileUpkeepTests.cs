using Ledger.App.Screens;
using Ledger.Terminal;
using NodaTime.Testing;

namespace Ledger.App.Tests;

/// <summary>What the screens do with the file is what the commands do.</summary>
public sealed class FileUpkeepTests : IDisposable
{
    private readonly Darkroom _room = Darkroom.WithDemoYear();
    private readonly FileUpkeep _upkeep;
    private readonly List<double> _progress = [];

    public FileUpkeepTests()
    {
        var noon = _room.Today.At(new LocalTime(12, 0)).InUtc().ToInstant();
        _upkeep = new FileUpkeep(_room.Ledger,
            new ZonedClock(new FakeClock(noon), DateTimeZone.Utc, CalendarSystem.Iso));
    }

    [Fact]
    public void A_check_tells_how_far_it_is_and_what_it_found()
    {
        var report = _upkeep.Check(new Told(_progress), default);
        Assert.True(report.IsDone);
        Assert.Contains("nothing is wrong", report.Sentences[0], StringComparison.Ordinal);
        Assert.NotEmpty(_progress);
        Assert.Equal(_progress.Order(), _progress);
    }

    [Fact]
    public void An_export_appears_whole_or_not_at_all_and_replaces_only_when_it_is_told_to()
    {
        var folder = _room.PathOf("export");
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        Assert.False(_upkeep.Export(folder, false, new Told(_progress), stopped.Token).IsDone);
        Assert.Empty(Directory.EnumerateFiles(folder));

        Assert.True(_upkeep.Export(folder, false, new Told(_progress), default).IsDone);
        Assert.Equal(1, _progress[^1]);
        Assert.Contains("exists already", _upkeep.Export(folder, false, new Told(_progress), default).Sentences[0],
            StringComparison.Ordinal);
        Assert.True(_upkeep.Export(folder, true, new Told(_progress), default).IsDone);
    }

    [Fact]
    public void A_backup_never_replaces_a_file()
    {
        Assert.True(_upkeep.BackUp(_room.PathOf("copy.db")).IsDone);
        Assert.False(_upkeep.BackUp(_room.PathOf("copy.db")).IsDone);
        Assert.Equal(0, _room.RunAnywhere("--file", _room.PathOf("copy.db"), "check").Status);
    }

    [Fact]
    public void A_file_is_tried_then_recorded_then_known_and_a_bad_one_is_listed_row_by_row()
    {
        var file = _room.Write("counts.csv", "date,item,found,reason\n2026-03-14,practice,90,bent sheets\n");
        Assert.StartsWith("1 entry would be recorded", Import(file, isDry: true).Sentences[0],
            StringComparison.Ordinal);
        Assert.StartsWith("1 entry recorded", Import(file, isDry: false).Sentences[0], StringComparison.Ordinal);
        Assert.StartsWith("0 entries recorded, 1 already there", Import(file, isDry: false).Sentences[0],
            StringComparison.Ordinal);

        var bad = _room.Write("bad.csv", "date,item,found,reason\nsoon,practice,90,x\n2026-03-14,nothing,1,x\n");
        var report = Import(bad, isDry: false);
        Assert.False(report.IsDone);
        Assert.StartsWith("nothing was written", report.Sentences[0], StringComparison.Ordinal);
        Assert.Contains(report.Sentences, sentence => sentence.Contains("line 2", StringComparison.Ordinal));
    }

    [Fact]
    public void What_cannot_be_read_is_said_in_a_sentence()
    {
        Assert.Contains("there is no folder",
            _upkeep.Import(_room.PathOf("none"), null, false, new Told(_progress), default).Sentences[0],
            StringComparison.Ordinal);
        Assert.Contains("to be reminded of written to", _upkeep.WriteCalendar(_room.PathOf("dates.ics")).Sentences[0],
            StringComparison.Ordinal);
        Assert.StartsWith("BEGIN:VCALENDAR", File.ReadAllText(_room.PathOf("dates.ics")), StringComparison.Ordinal);
        var note = _room.Write("note.txt", "mine");
        Assert.Equal([$"{note} is not a calendar; name another file."], _upkeep.WriteCalendar(note).Sentences);
        Assert.Equal([$"{_room.Ledger} is the ledger itself; name another file."],
            _upkeep.WriteCalendar(_room.Ledger).Sentences);
        Assert.Equal([$"{_room.Ledger} is the ledger itself; name another file."],
            _upkeep.BackUp(_room.Ledger).Sentences);
    }

    public void Dispose() => _room.Dispose();

    private UpkeepReport Import(string path, bool isDry) =>
        _upkeep.Import(path, "counts", isDry, new Told(_progress), default);

    private sealed class Told(List<double> told) : IProgress<double>
    {
        public void Report(double value) => told.Add(value);
    }
}
