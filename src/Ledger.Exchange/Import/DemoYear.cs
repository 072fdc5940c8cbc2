namespace Ledger.Exchange.Import;

/// <summary>The invented year of one tray worker, from the CSV files of sample-data.</summary>
public static class DemoYear
{
    /// <summary>The day on which the year ends as the files tell it.</summary>
    public static LocalDate LastDay { get; } = new(2026, 3, 15);

    /// <summary>The files, as far as they are there.</summary>
    public static IReadOnlyList<string> Kinds { get; } = [.. CsvImport.Kinds.Where(kind => Open(kind) is not null)];

    /// <summary>
    /// The entries in their order, moved in time so that the year's last day is <paramref name="today"/>.
    /// </summary>
    public static IReadOnlyList<Entry> Read(LocalDate today)
    {
        var days = Period.DaysBetween(LastDay, today);
        var files = ImportFolder.Read(Kinds.Select(kind => (kind, Open(kind)!)), new()
        {
            Today = today, ItemOf = _ => null, Formats = new(), Shift = date => date.PlusDays(days),
        });
        return files.FirstOrDefault(file => file.Problems.Count > 0) is { } bad
            ? throw new InvalidOperationException($"the demo year cannot be read: {bad.Source}, {bad.Problems[0]}")
            : [.. ImportFolder.InOrder(files).Select(entry => entry.Entry)];
    }

    /// <summary>The bytes of a file of the demo year, or null when it has none of that kind.</summary>
    public static Stream? Open(string kind) =>
        typeof(DemoYear).Assembly.GetManifestResourceStream($"sample-data/{kind}.csv");
}
