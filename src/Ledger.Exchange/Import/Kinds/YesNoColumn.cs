namespace Ledger.Exchange.Import.Kinds;

/// <summary>A column that says yes or no; nothing means no.</summary>
internal static class YesNoColumn
{
    public static IReadOnlyList<string> Names { get; } = ["no", "yes"];
}
