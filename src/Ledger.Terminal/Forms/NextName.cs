using System.Globalization;

namespace Ledger.Terminal.Forms;

/// <summary>The name that follows another one: S22, S23; F09, F10.</summary>
internal static class NextName
{
    /// <summary>The name with its last number raised by one; with "2" behind it when it has none.</summary>
    public static string After(string name)
    {
        var digits = name.Reverse().TakeWhile(char.IsAsciiDigit).Count();
        if (digits is 0 or > 9)
            return name + "2";
        var number = int.Parse(name[^digits..], NumberStyles.None, CultureInfo.InvariantCulture) + 1;
        return name[..^digits] + number.ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0');
    }

    /// <summary>The first name after another one that is not taken.</summary>
    public static string After(string name, Func<string, bool> isTaken)
    {
        var next = After(name);
        while (isTaken(next))
            next = After(next);
        return next;
    }
}
