namespace Ledger.App.Output;

/// <summary>
/// The examples of the manual page: a year's usual questions and entries, in an order that makes sense.
/// </summary>
internal static class ManualExamples
{
    /// <summary>Each with what it is for. They are typed on the demo year, one after the other.</summary>
    public static IReadOnlyList<(string Purpose, string Line)> All { get; } =
    [
        ("Look around in an invented year of work, in a file of its own:", "trayledger demo --into demo.db --no-ui"),
        ("Use that file from now on, without naming it each time:", "export TRAYLEDGER_FILE=demo.db"),
        ("What needs you, with the one step that settles it:", "trayledger show today"),
        ("Record a delivery of two boxes, with what they cost:",
            "trayledger record delivery fen80 2 --price 186 --shipping 14.50 --expires 2028-06-30"),
        ("See what a session would need before the lights go out:", "trayledger plan session --exposed \"fen80 N\""),
        ("Record the session that you developed:",
            "trayledger record session evening-2 --process film --sheets \"4 practice N 25ml\""),
        ("What a negative of one film really cost, as text and as JSON for other programs:",
            "trayledger show costs --film fen80"),
        ("", "trayledger show costs --film fen80 --json"),
        ("What came from what, in both directions:", "trayledger trace F4"),
        ("Which columns a file of sessions has, with an example row:", "trayledger import sessions --template"),
        ("See what an import of a folder of CSV files would do, and write nothing:",
            "trayledger import all sample-data --dry-run"),
        ("Copy the ledger while it is in use, and write every table as CSV:", "trayledger backup ledger-copy.db"),
        ("", "trayledger export ledger-2026"),
        ("In a script that runs each morning: say something only when something must be done:",
            "trayledger show today --exit-code > today.txt || cat today.txt"),
        ("Complete commands in bash:",
            "trayledger completion bash > ~/.local/share/bash-completion/completions/trayledger"),
    ];
}
