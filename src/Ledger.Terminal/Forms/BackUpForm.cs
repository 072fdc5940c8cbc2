using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>A copy of the ledger is made.</summary>
internal sealed class BackUpForm : WorkForm
{
    private readonly IUpkeep _upkeep;

    /// <summary>Opens the form.</summary>
    /// <param name="upkeep">Who does it.</param>
    /// <param name="path">The copy that is offered.</param>
    public BackUpForm(IUpkeep upkeep, string path)
    {
        _upkeep = upkeep;
        File.Offer(path);
    }

    public override string Title => "Back up";

    public override IReadOnlyList<string> Purpose =>
    [
        "A consistent copy of the ledger in one file, made while it is in use. It is a ledger itself.",
        "`trayledger backup --restore FILE` puts it back and keeps what stood there.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows => [[File]];

    public FormField File { get; } = new("File", 60) { Hint = "A new file, best on another disk." };

    protected override string Promise =>
        $"A copy of the ledger is written to {File.Text.Trim()}; a file that is there already is not touched.";

    protected override Work Work()
    {
        var path = File.Text.Trim();
        return new("Back up", (_, _) => _upkeep.BackUp(path));
    }
}
