namespace Ledger.App.Tests.Support;

/// <summary>What people read of the demo year: each line is a command that shows some of it.</summary>
internal static class Readings
{
    public const string Shown = """
        show today
        show shelf
        show baths
        show bath F1
        show bath F4
        show bath PF4
        show holders
        show sessions --last 100
        show prints --last 100
        show costs --by month
        show costs --film fen80
        show costs
        show costs --by session --formula average
        show costs --by number
        show reorder
        show journal --last 500
        show jugs
        show plans
        show prices
        show forgotten --months 1
        show formats
        show settings
        show item tarnfix
        show item fen80
        show sheet 2025-014
        show sheet E07-2
        plan session --from-plan tarn
        show sheets
        show faults
        trace F3
        trace F3 --at-risk
        """;

    /// <summary>The words of each command, with others beside those that show something.</summary>
    public static IEnumerable<string> With(string others) =>
        $"{Shown}\n{others}".Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
