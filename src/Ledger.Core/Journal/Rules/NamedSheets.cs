using Ledger.Core.Film;
using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Rules;

/// <summary>The developed sheets that an entry names, by their negatives' numbers or their own.</summary>
internal static class NamedSheets
{
    /// <summary>At least one.</summary>
    public static IReadOnlyList<DevelopedSheet> Some(IReadOnlyList<string> names, Draft draft)
    {
        Require.That(names.Count > 0, "name at least one sheet, such as 2025-014 or #12");
        return In(names, draft);
    }

    /// <summary>Those that are named, in that order; each once.</summary>
    public static IReadOnlyList<DevelopedSheet> In(IReadOnlyList<string> names, Draft draft)
    {
        var sheets = names.Select(name => Developed(name, draft)).ToList();
        if (sheets.GroupBy(sheet => sheet.Id).FirstOrDefault(group => group.Count() > 1) is { } twice)
            Require.That(false, $"{twice.First().Name} is named twice; name it once");
        return sheets;
    }

    /// <summary>One of them; developed by the day of the entry.</summary>
    public static DevelopedSheet Developed(string name, Draft draft)
    {
        var sheet = draft.Past.Developed(name.Trim()) ?? throw new RefusedException(
            RefusalKind.Unknown,
            SheetId.Parse(name.Trim()) is { } id && draft.Holdings.Film.Sheets.Any(known => known.Id == id)
                ? $"sheet {id} is not developed yet; record its session first, or name a sheet that is developed"
                : $"no developed sheet is called \"{name.Trim()}\"; name a negative such as 2025-014, or a sheet such "
                    + "as #12; `show sheets` finds them");
        Require.That(
            draft.Date >= sheet.Date,
            $"{sheet.Name} was developed on {Dates.Text(sheet.Date)}, after {Dates.Text(draft.Date)}; date the entry "
                + "then or later");
        return sheet;
    }

    /// <summary>Their names with commas between.</summary>
    public static string Text(IEnumerable<DevelopedSheet> sheets) =>
        string.Join(", ", sheets.Select(sheet => sheet.Name));
}
