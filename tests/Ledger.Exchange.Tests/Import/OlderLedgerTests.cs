using System.IO.Compression;
using System.Runtime.CompilerServices;
using System.Text;
using NodaTime.Testing;

namespace Ledger.Exchange.Tests.Import;

/// <summary>
/// A ledger that earlier versions imported knows the rows of its files, though files, columns and words have other
/// names now.
/// </summary>
public sealed class OlderLedgerTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trayledger-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Importing_the_files_of_version_0_2_0_under_their_new_names_adds_nothing()
    {
        var clock = new ZonedClock(new FakeClock(DemoYear.LastDay.AtMidnight().InUtc().ToInstant()),
            DateTimeZone.Utc, CalendarSystem.Iso);
        var path = Path.Combine(_folder, "ledger.db");
        using (var packed = new GZipStream(File.OpenRead(Fixture()), CompressionMode.Decompress))
        using (var file = File.Create(path))
            packed.CopyTo(file);
        using var ledger = LedgerFile.Open(path, clock);
        Assert.NotNull(ledger.MigratedFrom);
        var files = ImportFolder.Read(DemoYear.Kinds.Select(kind => (kind, (Stream)AsItWas(kind))),
            Csv.Nothing with { Today = DemoYear.LastDay });
        // What the year tells now and did not then: that boxes were taken out of the freezer before they were opened.
        var entries = ImportFolder.InOrder(files).Select(sourced => sourced.Entry)
            .Where(entry => !entry.Key.StartsWith("storage_moves:demo-thaw-", StringComparison.Ordinal)).ToList();
        Assert.Equal(DemoYear.Read(DemoYear.LastDay).Count - 5, entries.Count);
        var again = ledger.Import(entries, dryRun: false, null, default);
        Assert.Empty(again.Refused.Select(refused => $"{entries[refused.Index].Key}: {refused.Refusal.Sentence}"));
        Assert.Equal((0, entries.Count), (again.Posted, again.AlreadyThere));
    }

    /// <summary>The keys are those that version 0.2.0 gave to these rows.</summary>
    [Theory]
    [InlineData("observations", "date,bath,sign,still_used\n2025-05-12,F1,yellow,\n",
        "observations:#322b46b19ffb7c95a253e27d")]
    [InlineData("silver_tests", "date,bath,grams_per_litre\n2025-05-12,F1,6.5\n",
        "observations:#da1361b94313c15ce22abe78")]
    [InlineData("residual_tests", "date,bath,looked_for,result,passed,session\n2025-05-12,F1,hypo,0.012 g/m2,yes,S1\n",
        "observations:#f3e7938dea0b1cf83ddc94e5")]
    [InlineData("bath_storage", "date,bath,container\n2025-05-12,F1,open tray\n",
        "observations:#b1daf775b5669327c701cd52")]
    [InlineData("indicators", "date,bath,colour\n2025-05-12,S1,purple\n", "observations:#18fdaff802286192202b5127")]
    [InlineData("control_strips", "date,bath,result,within_limits\n2025-05-12,D1,speed -0.12,no\n",
        "observations:#e679849555a640cf90dd5c66")]
    [InlineData("order_cancellations", "date,order,item,reason\n2026-02-01,spring,pan,no longer made\n",
        "order_changes:#8bf622bb61fa726a23c84847")]
    [InlineData("order_changes", "date,order,item,packs\n2026-02-01,spring,pan,3\n",
        "order_changes:#4c9fbcb921becfdab9ebb9af")]
    [InlineData("jug_starts", "date,jug,size_ml,contents\n2024-06-01,J1,20000,used fixer\n",
        "jugs:#cfa1e03d01e8e2ccb55af5a1")]
    [InlineData("jug_fillings", "date,jug,volume_ml,what\n2024-06-02,J1,500,first rinse\n",
        "jugs:#ec880a32ba50f2696f9b50ed")]
    [InlineData("jug_handovers", "date,jug,to\n2025-09-20,J1,collection point\n", "jugs:#f4139ce2d03c311a83dddb86")]
    [InlineData("jug_handovers", "date,jug,to,reference\n2025-09-20,J1,collection point,given\n", "jugs:given")]
    [InlineData("openings", "date,container,batch\n2025-05-24,pan,C1\n", "openings:#4e4e501f6ef4acd16337a934")]
    [InlineData("openings", "date,container\n2025-05-24,pan/3\n", "openings:#8a56061d3048d203e5baa7ed")]
    [InlineData("undone", "date,entry,reason\n2025-05-12,deliveries:A-1,wrong\n", "undone:#8b56b584d1ea59e2483b0a95")]
    [InlineData("processes", "process,step,role,minutes\nfilm,1,presoak,2\nfilm,2,final rinse,1\n",
        "processes:film#b00be9f68cc18f90170596ae")]
    [InlineData("prints", "session,date,item,sheets\nP1,2025-05-12,pan,3\nP1,,pan,1\n",
        "prints:P1#28ecc9f64e4bdae62100d758")]
    public void A_row_of_a_file_that_was_split_or_renamed_is_looked_up_as_it_was_known(string kind,
        string text, string former) =>
        Assert.Contains(former, Assert.Single(Csv.Read(kind, text).Entries).Entry.FormerKeys);

    /// <summary>
    /// A file of the demo year with the notes of that version: a step's note has another word since, which no name is.
    /// </summary>
    private static MemoryStream AsItWas(string kind)
    {
        using var text = new StreamReader(DemoYear.Open(kind)!);
        return new(Encoding.UTF8.GetBytes(text.ReadToEnd().Replace("the developer and the final rinse",
            "the developer and the last rinse", StringComparison.Ordinal)));
    }

    private static string Fixture([CallerFilePath] string here = "") => Path.GetFullPath(
        Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "Ledger.Storage.Tests", "Fixtures", "0.2.0-demo.db.gz"));
}
