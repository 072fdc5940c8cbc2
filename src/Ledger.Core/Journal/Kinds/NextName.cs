using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Kinds;

/// <summary>The name that follows a name: F4 after F3, S09 after S08, tray2 after tray.</summary>
public static class NextName
{
    private const int MostDigits = 9;

    /// <summary>The first name after another one that is not taken.</summary>
    /// <param name="name">The name before it.</param>
    /// <param name="isTaken">Whether there is something of that name.</param>
    public static string After(string name, Func<string, bool> isTaken)
    {
        var next = After(name);
        while (isTaken(next))
            next = After(next);
        return next;
    }

    /// <summary>The name with its last number raised by one; with "2" behind it when it has none.</summary>
    public static string After(string name)
    {
        var digits = name.Length - name.AsSpan().TrimEnd("0123456789").Length;
        if (digits is 0 or > MostDigits)
            return $"{name}2";
        var number = int.Parse(name.AsSpan(name.Length - digits), NumberStyles.None, CultureInfo.InvariantCulture) + 1;
        return $"{name.AsSpan(0, name.Length - digits)}{Scaled.ToText(number, 0).PadLeft(digits, '0')}";
    }
}
