using System.Text.RegularExpressions;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Kinds;

/// <summary>
/// record amendment, amendments.csv: an entry is amended. Its fields are those of the kind that it amends.
/// </summary>
internal static partial class AmendmentKind
{
    private const string Accepted =
        "field=value, such as price=12.50 or note=\"from the second box\"; 2.fate=reject for the second line; several "
            + "with \"; \" between them";

    private static readonly Field<string> Amended = new("entry", Notations.Line(500))
    {
        Help = "the entry to amend: its number, as show journal lists it, or its reference, such as sessions:S16",
        Example = "57", IsNeeded = true, IsArgument = true, Width = 24,
    };

    private static readonly Field<IReadOnlyList<FieldChange>> Changes = new("changes", new(
        (text, _, _) => Read(text) is { Count: > 0 } changes ? new(true, changes, "")
            : Parsed.Not<IReadOnlyList<FieldChange>>(Accepted),
        (changes, _) => string.Join("; ", changes.Select(Text))) { Placeholder = "FIELD=VALUE", Divider = "; " })
    {
        Help = "field=value, such as price=12.50; 2.fate=reject for the second line", Example = "price=12.50",
        IsNeeded = true, IsArgument = true, Width = 50,
    };

    private static readonly Field<string> Reason = SharedFields.Reason(
        "why: mistyped, invoice came later", "mistyped", width: 30, offer: "mistyped",
        usual: ["mistyped", "found out later"]);

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<Amendment>
    {
        Name = "amendment",
        File = "amendments",
        Title = "Amend an entry",
        Purpose = "Changes what an earlier entry says, with a reason; what it said before stays readable.",
        Details =
        [
            "What followed from it is worked out again: costs of later sessions, what a box holds, when a bath was "
                + "exhausted. A later entry that would no longer hold refuses the change and is named.",
        ],
        Example = "deliveries:demo-syrup price=41.50 --reason mistyped",
        IsDated = false,
        HasPlace = false,
        Bound =
        [
            new(Amended, entry => entry.Reference ?? Scaled.ToText(entry.Number, 0)),
            new(Changes, entry => entry.Changes), new(Reason, entry => entry.Reason),
        ],
        With = values =>
        {
            var entry = values.Of(Amended);
            var isNumber = long.TryParse(entry, NumberStyles.None, CultureInfo.InvariantCulture, out var number);
            return new()
            {
                Key = values.Key, Date = values.Date, Note = values.Note, Number = isNumber ? number : 0,
                Reference = isNumber ? null : entry, Changes = values.Of(Changes), Reason = values.Of(Reason),
            };
        },
    };

    private static List<FieldChange> Read(string text)
    {
        var changes = new List<FieldChange>();
        foreach (var part in Between().Split(text))
        {
            var change = Pattern().Match(part);
            if (!change.Success || (change.Groups["line"].Length == 0 && change.Groups["field"].Length == 0))
                return [];
            var line = change.Groups["line"].Length == 0
                ? 0
                : int.Parse(change.Groups["line"].Value, CultureInfo.InvariantCulture);
            changes.Add(new(line, change.Groups["field"].Value.Replace('-', '_'), change.Groups["value"].Value));
        }

        return changes;
    }

    private static string Text(FieldChange change) =>
        (change.Line == 0 ? change.Field : change.Field.Length == 0
            ? $"{change.Line}"
            : $"{change.Line}.{change.Field}") + $"={change.Value}";

    [GeneratedRegex(@";\s*(?=(?:\d{1,3}\.)?[A-Za-z_-]*=|\d{1,3}=)")]
    private static partial Regex Between();

    [GeneratedRegex(@"^\s*(?:(?<line>\d{1,3})(?:\.|(?==)))?(?<field>[A-Za-z_-]*)=\s*(?<value>.*?)\s*$",
        RegexOptions.Singleline)]
    private static partial Regex Pattern();
}
