using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>What can be done with the ledger's file as a whole.</summary>
/// <param name="ledger">The ledger.</param>
/// <param name="upkeep">Who does it.</param>
/// <param name="file">The file's path.</param>
internal sealed class FileModel(ILedger ledger, IUpkeep upkeep, string file) : TableModel(ledger)
{
    private readonly IReadOnlyList<Job> _jobs =
    [
        new("Settings", "units, limits and habits of the whole ledger", () => new TableStep(new SettingsModel(ledger))),
        new("Check", "proves that balances, references, dates and costs agree",
            () => new WorkStep(new("Check", upkeep.Check))),
        new("Back up", "a consistent copy in one file",
            () => new FormStep(new BackUpForm(upkeep, Copy(file, Dates.Text(ledger.Today))))),
        new("Export", "every table as CSV",
            () => new FormStep(new ExportForm(upkeep, Beside(file, $"-{Dates.Text(ledger.Today)}")))),
        new("Import", "entries from CSV", () => new FormStep(new ImportForm(upkeep))),
        new("Calendar", "the days to be reminded of as iCalendar",
            () => new FormStep(new CalendarForm(upkeep, Beside(file, ".ics")))),
    ];

    public override string Name => "File";

    public override IReadOnlyList<string> Purpose =>
        ["What can be done with the ledger's file as a whole. Enter begins; what takes a while shows how far it is and "
            + "can be stopped."];

    public override WorkedExample Example { get; } = new("\n",
        "Enter on the first line opens the settings of the ledger.", "warn-days");

    public override string Empty => "";

    public override IReadOnlyList<TableColumn> Columns { get; } = [new("What", 12), new("It is", 60, Least: 20)];

    public override int Count => _jobs.Count;

    public override string? OpenLabel => "Begin";

    public override void Refresh()
    {
    }

    public override string IdOf(int row) => _jobs[row].Name;

    public override string Cell(int row, int column) => column == 0 ? _jobs[row].Name : _jobs[row].What;

    public override Step? Open(int row) => row < 0 ? null : _jobs[row].Begin();

    public override IReadOnlyList<Block> Details(int row)
    {
        var last = Ledger.Journal(Today, null, 1);
        return
        [
            Block.Facts("The ledger", [
                ("File", file),
                ("Last entry", last is [var entry] ? $"{entry.Number}, {Dates.Text(entry.Date)}: {entry.Summary}"
                    : "none yet"),
            ]),
            Block.Of("Good practice",
                "Check the file and back it up before a season, and keep the copy on another disk."),
        ];
    }

    /// <summary>A path beside the ledger, named after it.</summary>
    private static string Beside(string file, string ending) =>
        Path.Combine(Path.GetDirectoryName(file) ?? "", Path.GetFileNameWithoutExtension(file) + ending);

    /// <summary>The first name for today's copy that no file has: a copy is never written over another.</summary>
    private static string Copy(string file, string day)
    {
        var free = Beside(file, $"-{day}.db");
        for (var next = 2; Path.Exists(free); next++)
            free = Beside(file, $"-{day}-{next}.db");
        return free;
    }

    private sealed record Job(string Name, string What, Func<Step> Begin);
}
