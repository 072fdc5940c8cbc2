namespace Ledger.Storage.Reading;

/// <summary>The items that rows of the file name.</summary>
internal static class NamedItem
{
    /// <summary>The item that a row names.</summary>
    /// <exception cref="KeyNotFoundException">The file was altered: it names none, or one not there.</exception>
    public static Item ItemOf(this Holdings holdings, string? code) =>
        code is not null && holdings.Item(code) is { } item
            ? item
            : throw new KeyNotFoundException($"a row names the item \"{code}\", which is not there");
}
