namespace Ledger.App.Commands.Record;

/// <summary>What the help of a kind's command adds to its tables.</summary>
internal static class KindHelp
{
    private const int Columns = 80;

    public static string Details(EntryKind kind) => string.Join(
        Environment.NewLine,
        kind.Details.Concat(ChemistryCautions.Rest(kind)).SelectMany(detail => Output.Prose.Wrap(detail, Columns))
            .Concat(Example(kind)));

    /// <summary>The example and what it needs first, a command a line; what does not fit is indented.</summary>
    private static IEnumerable<string> Example(EntryKind kind) =>
        kind.ExampleNeeds.Append($"{kind.Name} {kind.Example}")
            .SelectMany(words => Output.Prose.Wrap($"trayledger record {words}", Columns - Mark.Length - 2)
                .Select((line, i) => i == 0 ? line : $"  {line}"))
            .Select((line, i) => (i == 0 ? Mark : new string(' ', Mark.Length)) + line);

    private const string Mark = "Example: ";
}
