using System.Text.Json;
using NodaTime.Testing;

namespace Ledger.App.Tests.Support;

/// <summary>The program in a folder of its own, with a clock that stands still, and nobody at a terminal.</summary>
internal sealed class Darkroom : IDisposable
{
    private static readonly Lazy<byte[]> _demo = new(MakeDemo);

    private readonly string _folder = Directory.CreateTempSubdirectory("ledger-app-").FullName;

    public Darkroom(LocalDate? today = null) => Today = today ?? DemoYear.LastDay;

    public LocalDate Today { get; set; }

    /// <summary>Noon of today.</summary>
    public ZonedClock Clock =>
        new(new FakeClock(Today.At(new LocalTime(12, 0)).InUtc().ToInstant()), DateTimeZone.Utc, CalendarSystem.Iso);

    public string Ledger => PathOf("ledger.db");

    public byte[] Input { get; set; } = [];

    public IScreens? Screens { get; set; }

    /// <summary>The columns that text may take.</summary>
    public int Width { get; set; } = 80;

    public CancellationToken Interrupt { get; set; }

    /// <summary>Takes the results in place of what a run gives back; for outputs that cannot be written.</summary>
    public TextWriter? Output { get; set; }

    public Dictionary<string, string> Variables { get; } = [];

    /// <summary>A darkroom whose ledger holds the demo year.</summary>
    public static Darkroom WithDemoYear()
    {
        var room = new Darkroom();
        File.WriteAllBytes(room.Ledger, _demo.Value);
        return room;
    }

    /// <summary>A darkroom whose ledger is there and holds nothing.</summary>
    public static Darkroom WithEmptyLedger()
    {
        var room = new Darkroom();
        LedgerFile.Open(room.Ledger, room.Clock).Dispose();
        return room;
    }

    public string PathOf(string name) => Path.Combine(_folder, name);

    /// <summary>The names of the files in the darkroom itself, in order.</summary>
    public IEnumerable<string> Names() =>
        Directory.EnumerateFiles(_folder).Select(file => Path.GetFileName(file)!).Order(StringComparer.Ordinal);

    public string Write(string name, string text)
    {
        File.WriteAllText(PathOf(name), text);
        return PathOf(name);
    }

    /// <summary>The bytes that were sent to the results as they are.</summary>
    public MemoryStream Bytes { get; } = new();

    /// <summary>Runs a command line on this darkroom's ledger.</summary>
    public Ran Run(params string[] args) => RunAnywhere(["--file", Ledger, .. args]);

    /// <summary>Runs a command line that must succeed, and gives its text.</summary>
    public string Do(params string[] args)
    {
        var ran = Run(args);
        Assert.True(ran.Status == 0, $"{string.Join(' ', args)} ended with {ran.Status}: {ran.Error}");
        return ran.Out;
    }

    /// <summary>Runs a command line as it is.</summary>
    public Ran RunAnywhere(params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var status = Program.Run(args, new()
        {
            Out = Output ?? output,
            Error = error,
            Bytes = from => from.CopyTo(Bytes),
            In = () => new MemoryStream(Input),
            Clock = Clock,
            Width = Width,
            Variable = Variables.GetValueOrDefault,
            Screens = () => Screens,
            Interrupts = () => Interrupt,
        });
        return new(status, output.ToString(), error.ToString());
    }

    public void Dispose()
    {
        foreach (var file in Directory.EnumerateFiles(_folder, "*", SearchOption.AllDirectories))
            File.SetAttributes(file, FileAttributes.Normal);
        Directory.Delete(_folder, recursive: true);
    }

    private static byte[] MakeDemo()
    {
        using var room = new Darkroom();
        room.Do("demo", "--no-ui");
        room.Do("backup", room.PathOf("copy.db"));
        return File.ReadAllBytes(room.PathOf("copy.db"));
    }
}

/// <summary>How a command line ended and what it wrote.</summary>
internal sealed record Ran(int Status, string Out, string Error)
{
    public JsonElement Json
    {
        get
        {
            using var document = JsonDocument.Parse(Out);
            return document.RootElement.Clone();
        }
    }
}
