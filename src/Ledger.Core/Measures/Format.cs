using System.Diagnostics.CodeAnalysis;
using System.Text.RegularExpressions;

namespace Ledger.Core.Measures;

/// <summary>A format of film or paper and the area it counts with.</summary>
/// <param name="Code">As it is written: 4x5, 8x10, 13x18cm, 120, 135-36, WxH / WxHcm / WxHmm for any other size, or a
/// name of the user's own.</param>
/// <param name="Area">The area of one sheet or roll. A roll of 120 or 135-36 counts as 80 sq in by the trade's
/// convention.</param>
/// <param name="Unit">What a film of this format is counted in: sheets or rolls.</param>
public sealed partial record Format(string Code, Area Area, Unit Unit = Unit.Sheet)
{
    /// <summary>What may be the name of a format beside a size.</summary>
    public const string AcceptedName =
        "the name of a format may hold up to 20 letters, digits, dots and dashes only, and what begins like a size "
            + "must be one, such as 4x5 or 13x18cm";

    /// <summary>
    /// The one spelling of its name, whatever way it was written: in lower case, and a size without superfluous zeros
    /// and without "in", since a size without a unit is in inches. 4X5, 4.0x5 and 4x5in are all 4x5.
    /// </summary>
    public string Code { get; } = CodeOf(Code) ?? Code.Trim();

    /// <summary>The formats that need no unit in their name, smallest first.</summary>
    public static IReadOnlyList<Format> Common { get; } =
        [.. new[] { "4x5", "9x12cm", "5x7", "13x18cm", "18x24cm", "8x10", "20x25cm", "11x14",
            "120", "135-36" }.Select(Parse)];

    /// <summary>Reads a format's name.</summary>
    /// <exception cref="FormatException">Not a format.</exception>
    public static Format Parse(string text) => TryParse(text, out var format) ? format
        : throw new FormatException(
            $"\"{text}\" is not a format; write one such as 4x5, 8x10, 13x18cm, 120, 135-36, 7x17in or 100x125mm");

    /// <summary>Reads a format's name: inches when no unit is written.</summary>
    public static bool TryParse(string text, [NotNullWhen(true)] out Format? format)
    {
        var code = text.Trim().ToLowerInvariant();
        format = code is "120" or "135-36"
            ? new(code, Area.Unit80, Unit.Roll)
            : SizeOf(code) is { } size ? new(size.Code, size.Area) : null;
        return format is not null;
    }

    /// <summary>
    /// What a text calls a format: a size in its usual spelling, or a name that may be one of the user's own; null when
    /// it can be neither.
    /// </summary>
    public static string? CodeOf(string text)
    {
        var code = text.Trim().ToLowerInvariant();
        return SizeOf(code)?.Code ?? (Name().IsMatch(code) ? code : null);
    }

    /// <summary>
    /// Two are the same when they are called the same: the area that one counts with may be the user's own.
    /// </summary>
    public bool Equals(Format? other) =>
        other is not null && other.Code.Equals(Code, StringComparison.OrdinalIgnoreCase);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.OrdinalIgnoreCase.GetHashCode(Code);

    /// <summary>The format's code.</summary>
    public override string ToString() => Code;

    private static (string Code, Area Area)? SizeOf(string code)
    {
        if (Size().Match(code) is not { Success: true } match)
            return null;
        var (width, height, unit) = (Side(match.Groups[1]), Side(match.Groups[2]), match.Groups[3].Value);
        var perUnit = unit switch { "mm" => 100m, "cm" => 10_000m, _ => Area.PerSquareInch };
        var area = Math.Round(width * height * perUnit, MidpointRounding.AwayFromZero);
        return area is > 0 and < 1_000_000_000_000
            ? ($"{Scaled.ToText(width, 4)}x{Scaled.ToText(height, 4)}{(unit == "in" ? "" : unit)}",
                Area.FromHundredths(decimal.ToInt64(area))) : null;
    }

    private static decimal Side(Group group) => decimal.Parse(group.Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^([0-9]{1,5}(?:\.[0-9]{1,4})?)x([0-9]{1,5}(?:\.[0-9]{1,4})?)(in|cm|mm)?$",
        RegexOptions.CultureInvariant)]
    private static partial Regex Size();

    [GeneratedRegex(@"^(?![0-9.]+x)[a-z0-9._-]{1,20}$", RegexOptions.CultureInvariant)]
    private static partial Regex Name();
}
