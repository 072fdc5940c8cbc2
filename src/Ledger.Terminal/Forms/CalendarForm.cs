using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>The days to be reminded of are written for a calendar.</summary>
internal sealed class CalendarForm : WorkForm
{
    private readonly IUpkeep _upkeep;

    /// <summary>Opens the form.</summary>
    /// <param name="upkeep">Who does it.</param>
    /// <param name="path">The file that is offered.</param>
    public CalendarForm(IUpkeep upkeep, string path)
    {
        _upkeep = upkeep;
        File.Offer(path);
    }

    public override string Title => "Calendar";

    public override IReadOnlyList<string> Purpose =>
        ["The ends of bottles and baths, the days to order by, deliveries and price rises as iCalendar, for the "
            + "calendar that you look at anyway."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows => [[File]];

    public FormField File { get; } = new("File", 60);

    protected override string Promise =>
        $"The days to be reminded of are written to {File.Text.Trim()}, in the place of an older file.";

    protected override Work Work()
    {
        var path = File.Text.Trim();
        return new("Calendar", (_, _) => _upkeep.WriteCalendar(path));
    }
}
