using Ledger.Core.Measures;

namespace Ledger.Core.Sessions;

/// <summary>
/// How many sheets the user moves through a tray together: a setting, for their hands are the measure.
/// </summary>
/// <remarks>
/// Common practice, no source: four sheets of 8x10. Of smaller sheets as many as have the same area, but never more
/// than twice the number, since each has its turn on the way through the stack; of larger ones as many as of 8x10. One
/// at a time stays one at a time.
/// </remarks>
public sealed record BatchLimit
{
    private const int Most = 100;
    private readonly Dictionary<string, int> _byFormat;

    private BatchLimit(int sheets, Dictionary<string, int> byFormat) => (Sheets, _byFormat) = (sheets, byFormat);

    /// <summary>The sheets of 8x10.</summary>
    public int Sheets { get; }

    /// <summary>Four sheets of 8x10.</summary>
    public static BatchLimit CommonPractice { get; } = new(4, []);

    /// <summary>What the setting accepts.</summary>
    public const string Accepted =
        "the most sheets of 8x10 in a batch, 1 to 100, and other formats after it: 4, or 4 4x5=6 11x14=2";

    /// <summary>Reads "4" or "4 4x5=6 11x14=2"; null when it is something else.</summary>
    public static BatchLimit? Read(string text)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0 || Count(words[0]) is not { } sheets)
            return null;
        var byFormat = new Dictionary<string, int>();
        foreach (var word in words.Skip(1))
        {
            var parts = word.Split('=');
            if (parts.Length != 2 || Format.CodeOf(parts[0]) is not { } format || Count(parts[1]) is not { } count)
                return null;
            byFormat[format] = count;
        }

        return new(sheets, byFormat);
    }

    /// <summary>The most sheets or rolls of a format in a batch.</summary>
    public int Of(Format format)
    {
        if (_byFormat.TryGetValue(format.Code, out var own))
            return own;
        if (Sheets == 1)
            return 1;
        var sameArea = Sheets * Area.Unit80.Hundredths / format.Area.Hundredths;
        return (int)Math.Clamp(sameArea, Sheets, 2 * Sheets);
    }

    /// <summary>Two limits are the same when they are written the same.</summary>
    public bool Equals(BatchLimit? other) => other is not null && other.ToString() == ToString();

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(ToString());

    /// <summary>As the setting is written.</summary>
    public override string ToString() => string.Join(
        ' ',
        new[] { Text(Sheets) }.Concat(_byFormat.OrderBy(pair => pair.Key, StringComparer.Ordinal)
            .Select(pair => $"{pair.Key}={Text(pair.Value)}")));

    private static string Text(int count) => count.ToString(CultureInfo.InvariantCulture);

    private static int? Count(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is > 0 and <= Most
            ? count
            : null;
}
