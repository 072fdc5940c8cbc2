using Ledger.Core.Journal.Kinds;

namespace Ledger.App.Commands.Record;

/// <summary>What the help of a kind's command adds to its tables.</summary>
internal static class KindHelp
{
    private const int Columns = 80;

    public static string Details(EntryKind kind) => string.Join(
        Environment.NewLine,
        kind.Details.Concat(ChemistryCautions.Rest(kind)).SelectMany(detail => Output.Prose.Wrap(detail, Columns)).Concat(Example(kind)));

    /// <summary>The example, its further lines indented under the first.</summary>
    private static IEnumerable<string> Example(EntryKind kind) =>
        Output.Prose.Wrap($"Example: trayledger record {kind.Name} {kind.Example}", Columns - 2).Select((line, i) => i == 0 ? line : $"  {line}");
}
