namespace Ledger.Storage.Reading;

/// <summary>
/// Hands a list of numbers to SQLite's json_each, so that a query keeps one text whatever the length of the list.
/// </summary>
internal static class Json
{
    public static string Array(IEnumerable<long> numbers) => $"[{string.Join(',', numbers)}]";
}
