using System.Text.Json;

namespace Ledger.Exchange.Tests.Import;

/// <summary>Every entry of the demo year is said by its description, in words and in JSON.</summary>
public class DemoYearKindsTests
{
    [Fact]
    public void Every_entry_of_the_year_is_read_back_as_the_same()
    {
        var entries = DemoYear.Read(DemoYear.LastDay);
        Assert.True(entries.Count > 100);
        var items = entries.OfType<ItemDefinition>().ToDictionary(entry => entry.Item.Code, entry => entry.Item);
        var terms = new ReadingTerms { Today = DemoYear.LastDay, Formats = new(), ItemOf = items.GetValueOrDefault };
        foreach (var typed in new[] { terms,
            terms with { IsTyped = true, Style = MeasureStyle.Metric with { UsesFluidOunces = true } } })
            foreach (var entry in entries)
            {
                var kind = EntryKinds.Of(entry);
                var text = EntryWriting.Write(kind, entry, typed);
                Same(entry, EntryReading.Read(kind, text, typed));

                using var document = JsonDocument.Parse(EntryJson.Write(entry, typed));
                var problems = new List<FieldProblem>();
                Same(entry, EntryReading.Read(kind, EntryJson.Text(kind, document.RootElement, problems), typed));
                Assert.Empty(problems);
            }
    }

    private static void Same(Entry entry, EntryReading reading)
    {
        Assert.Empty(reading.Problems.Select(problem => $"{entry.Key}: {problem.Sentence(field => field.Name)}"));
        Assert.Equal(EntryWhole.Of(entry), EntryWhole.Of(reading.Entry!));
    }
}
