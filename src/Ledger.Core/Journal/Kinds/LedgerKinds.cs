using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Kinds;

/// <summary>record setting, settings.csv: a setting of the whole ledger is changed.</summary>
internal static class SettingKind
{
    private static readonly Field<string> Name = new("setting", Notations.Known("SETTING"))
    {
        Help = "the setting's name", Example = "liquids", IsNeeded = true, IsArgument = true, Width = 26,
        Choices = (_, _) => Setting.All.Select(setting => setting.Name),
    };

    private static readonly Field<string> Value = new("value", new(
        (text, read, _) => text.Length > 200 ? Parsed.Not<string>("a text of at most 200 characters")
            : Setting.Named(read.Find(Name) ?? "") is { } setting && setting.Read(Settings.Default, text) is null
                ? Parsed.Not<string>(setting.Accepted) : text,
        (text, _) => text) { Placeholder = "VALUE" })
    {
        Help = "its new value", Example = "floz", IsNeeded = true, IsArgument = true, Width = 60,
        Choices = (read, _) => Setting.Named(read.Find(Name) ?? "")?.AcceptedWords ?? [],
        Offer = (read, holdings) => Setting.Named(read.Find(Name) ?? "")?.Text(holdings.Settings),
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<SettingChange>
    {
        Name = "setting",
        File = "settings",
        Title = "Setting",
        Purpose = "Changes a setting of the whole ledger.",
        IsDated = false,
        Example = "liquids floz",
        Bound = [new(Name, entry => entry.Setting), new(Value, entry => entry.Value)],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Setting = values.Of(Name),
            Value = values.Of(Value),
        },
    };
}

/// <summary>
/// record undo, undone.csv: an entry is taken back. One field names it, by its number or by its reference.
/// </summary>
internal static class UndoKind
{
    private static readonly Field<string> EntryToUndo = new("entry", Notations.Line(500))
    {
        Help = "the entry to take back: its number, as show journal lists it, or its reference, such as sessions:S16",
        Example = "57", IsNeeded = true,
        IsArgument = true, Width = 24,
    };

    private static readonly Field<string> Reason = SharedFields.Reason(
        "why: wrong bath, typed twice", "typed twice", width: 30, offer: "mistake", usual: ["mistake", "typed twice"]);

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<Undo>
    {
        Name = "undo",
        File = "undone",
        Title = "Undo an entry",
        Purpose = "Takes back an earlier entry, on its own day and with a reason; both stay in the journal.",
        Details =
        [
            "What followed from it is worked out again. An entry that could no longer hold refuses it and is named. An "
                + "undo can be undone too.",
        ],
        Example = "57 --reason \"typed twice\"",
        IsDated = false,
        HasPlace = false,
        Bound =
        [
            new(EntryToUndo, entry => entry.Reference ?? Scaled.ToText(entry.Number, 0)),
            new(Reason, entry => entry.Reason),
        ],
        With = values =>
        {
            var entry = values.Of(EntryToUndo);
            var isNumber = long.TryParse(entry, NumberStyles.None, CultureInfo.InvariantCulture, out var number);
            return new()
            {
                Key = values.Key, Date = values.Date, Note = values.Note, Number = isNumber ? number : 0,
                Reference = isNumber ? null : entry,
                Reason = values.Of(Reason),
            };
        },
    };
}
