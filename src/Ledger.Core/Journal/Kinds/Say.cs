using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Kinds;

/// <summary>What an entry says of a field: nothing where its value is what silence means.</summary>
internal static class Say
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

    /// <summary>The name that follows a name: F4 after F3, S09 after S08, the first that is not taken.</summary>
    public static string Next(string name, Func<string, bool> isTaken)
    {
        var next = After(name);
        while (isTaken(next))
            next = After(next);
        return next;
    }

    private static string After(string name)
    {
        var digits = name.Length - name.AsSpan().TrimEnd("0123456789").Length;
        return digits is 0 or > 9 ? $"{name}2"
            : $"{name.AsSpan(0, name.Length - digits)}{Scaled.ToText(decimal.Parse(name.AsSpan(name.Length - digits), System.Globalization.CultureInfo.InvariantCulture) + 1, 0).PadLeft(digits, '0')}";
    }
}
