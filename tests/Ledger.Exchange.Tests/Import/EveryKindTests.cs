using CsCheck;
using Ledger.Core.Tests.Journal.Kinds;
using Ledger.Exchange.Export;

namespace Ledger.Exchange.Tests.Import;

/// <summary>Every kind of entry has its file, with a column for every field.</summary>
public class EveryKindTests
{
    public static TheoryData<string> Kinds => [.. CsvImport.Kinds];

    [Fact]
    public void The_files_are_those_of_the_kinds_in_the_order_of_posting() =>
        Assert.Equal(EntryKinds.All.Select(kind => kind.File), CsvImport.Kinds);

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Each_field_of_a_kind_has_a_column_of_its_own(string file)
    {
        var kind = EntryKinds.All.Single(kind => kind.File == file);
        Assert.Equal(kind.AllFields.Count + (kind.Line?.Fields.Count ?? 0),
            CsvImport.ColumnsOf(file).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_example_of_a_template_can_be_read(string file)
    {
        using var template = new StringWriter();
        CsvImport.WriteTemplate(file, template);
        var read = Csv.Read(file, template.ToString());
        Assert.Empty(read.Problems.Select(problem => problem.ToString()));
        Assert.Empty(read.Remarks);
        Assert.Single(read.Entries);
    }

    [Fact]
    public void Every_entry_of_the_demo_year_says_the_same_from_a_file_of_its_own()
    {
        var entries = DemoYear.Read(DemoYear.LastDay);
        var items = entries.OfType<ItemDefinition>().ToDictionary(entry => entry.Item.Code, entry => entry.Item);
        var terms = Csv.Nothing with { Today = DemoYear.LastDay, ItemOf = items.GetValueOrDefault };
        Assert.True(entries.Count > 100);
        foreach (var entry in entries)
        {
            var kind = EntryKinds.Of(entry);
            using var csv = new MemoryStream(System.Text.Encoding.UTF8.GetBytes(File(kind, entry, terms)));
            var read = CsvImport.Read(kind.File, csv, terms);
            Assert.Empty(read.Problems.Select(problem => $"{entry.Key}: {problem}"));
            Assert.Equal(EntryWhole.Of(entry),
                EntryWhole.Of(Assert.Single(read.Entries).Entry with { Key = entry.Key }));
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_random_entry_says_the_same_from_a_file_of_its_own(string file)
    {
        var kind = EntryKinds.All.Single(kind => kind.File == file);
        Said.Text(kind).Sample(
            text =>
            {
                text[CommonFields.Reference] = "key";
                var entry = EntryReading.Read(kind, text, Said.Terms).Entry!;
                using var csv = new MemoryStream(System.Text.Encoding.UTF8.GetBytes(File(kind, entry, Said.Terms)));
                var read = CsvImport.Read(kind.File, csv, Said.Terms);
                Assert.Empty(read.Problems.Select(problem => problem.ToString()));
                Assert.Equal(EntryWhole.Of(entry),
                    EntryWhole.Of(Assert.Single(read.Entries).Entry with { Key = entry.Key }));
            },
            iter: 100);
    }

    [Fact]
    public void A_kind_is_named_in_any_case_with_hyphens_or_underscores()
    {
        Assert.Equal("clearing_tests", CsvImport.Named("Clearing-Tests"));
        Assert.Equal("clearing_tests", CsvImport.Named("clearing_tests"));
        Assert.Null(CsvImport.Named("clearing tests and more"));
    }

    /// <summary>The entry as a file: what the whole entry says in its first row, each line in a row.</summary>
    private static string File(EntryKind kind, Entry entry, ReadingTerms terms)
    {
        var text = EntryWriting.Write(kind, entry, terms);
        if (text[CommonFields.Reference].Contains('#', StringComparison.Ordinal) || kind.NamedBy is not null)
            text[CommonFields.Reference] = "";
        var lineFields = kind.Line?.Fields.Select(field => field.Name).ToHashSet() ?? [];
        var columns = CsvImport.ColumnsOf(kind.File);
        var whole = kind.AllFields.ToDictionary(
            field => lineFields.Contains(field.Name) ? $"{kind.NamedBy!.Name}_{field.Name}" : field.Name,
            field => text[field]);
        string Cell(string column, int row) =>
            lineFields.Contains(column) ? text.Lines.ElementAtOrDefault(row)?[column] ?? ""
                : row == 0 || column == (kind.NamedBy?.Name ?? "reference") ? whole[column] : "";
        using var written = new StringWriter();
        CsvTable.Write(
            written, columns, Enumerable.Range(0, Math.Max(1, text.Lines.Count))
                .Select(row => columns.Select(column => Cell(column, row)).ToArray()));
        return written.ToString();
    }
}
