using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Kinds;

/// <summary>What an entry says of a field: nothing where its value is what silence means.</summary>
internal static class Given
{
    /// <summary>A text; null for an empty one.</summary>
    public static string? Text(string? text) => string.IsNullOrEmpty(text) ? null : text;

    /// <summary>Yes; null for no.</summary>
    public static bool? Yes(bool value) => value ? true : null;

    /// <summary>Names; null for none.</summary>
    public static IReadOnlyList<string>? Names(IReadOnlyList<string> names) => names.Count == 0 ? null : names;

    /// <summary>An amount of money; null for nothing.</summary>
    public static Money? Paid(Money money) => money == Money.Zero ? null : money;

    /// <summary>A number as it is typed; null for none.</summary>
    public static string? Number(decimal? number) => number is { } known ? Scaled.ToText(known, 6) : null;
}
