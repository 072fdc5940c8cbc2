using Ledger.Storage.Deriving;
using Ledger.Storage.Reading;
using Microsoft.Data.Sqlite;

namespace Ledger.Exchange.Tests.Past;

/// <summary>
/// The past is put right: what follows is as if it had been said rightly, and in time, from the first.
/// </summary>
public sealed class PastTests
{
    /// <summary>Every so many entries of the year are tried in a test run; 1 tries them all.</summary>
    private static readonly int Step = int.TryParse(Environment.GetEnvironmentVariable("TRAYLEDGER_PAST_STEP"),
        out var step) ? step : 9;

    [Fact]
    public void A_mistyped_price_put_right_is_as_if_it_had_never_been_mistyped()
    {
        var right = DemoFile.Year.OfType<Delivery>()
            .First(delivery => delivery.Lines.Any(line => line.Item == "fen80"));
        var wrong =
            right with { Lines = [
                .. right.Lines.Select(line => line with { Price = line.Price is { } price ? price + price : null })] };
        using var never = new DemoFile();
        using var erred = new DemoFile(DemoFile.Year.Select(entry => entry == right ? wrong : entry));
        Assert.NotEqual(never.State(), erred.State());
        var posted = erred.Accept(DemoFile.Amend(
            right.Key,
            [.. right.Lines.Select((line, i) => new FieldChange(i + 1, "price",
                line.Price is { } price ? $"{price.Amount}" : ""))]));
        Assert.Equal(never.State(), erred.State());
        Assert.Empty(erred.Ledger.Check(null, default).Problems);
        Assert.Contains(posted.Posting.Effects, effect => effect.What.Contains("session", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_taken_back_and_said_again_is_as_before()
    {
        using var file = new DemoFile();
        var before = file.State();
        var tried = 0;
        for (var number = 1L; number <= DemoFile.Year.Count; number += Step)
            if (file.Ledger.Post(DemoFile.Undo(number)) is Posted undo)
            {
                tried++;
                file.Accept(DemoFile.Undo(undo.Number));
                Assert.Equal(before, file.State());
            }

        Assert.True(tried >= DemoFile.Year.Count / Step / 3, $"{tried} could be taken back");
        Assert.Empty(file.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void What_is_taken_back_was_never_said_and_late_is_as_good_as_in_time()
    {
        using var file = new DemoFile();
        var before = file.State();
        var (tried, refused) = (0, 0);
        for (var i = 0; i < DemoFile.Year.Count; i += Step)
        {
            var entry = DemoFile.Year[i];
            using var without = new DemoFile();
            if (entry is Undo || without.Ledger.Post(DemoFile.Undo(i + 1)) is not Posted)
            {
                refused++;
                continue;
            }

            // What is late is said to come before the next entry of its day.
            var next = DemoFile.Year.Skip(i + 1).FirstOrDefault(later => later.Date == entry.Date && later is not Undo);
            var late = Assert.IsType<Posted>(
                without.Ledger.Post(entry with { Key = $"late-{i}", FormerKeys = [], Before = next?.Key ?? "" }));
            tried++;
            Assert.Empty(without.Ledger.Check(null, default).Problems);
            if (late.Posting.Names.Count == 0)
                Assert.Equal(Alike(before, entry.Key), Alike(without.State(), $"late-{i}"));
        }

        Assert.True(tried > refused / 3, $"{tried} tried, {refused} are needed by what followed");

        // The head of what was taken back stays in the journal and does not count; the late one has the key of its own.
        static List<string> Alike(IReadOnlyList<string> state, string key) =>
        [
            .. state.Where(row => !row.StartsWith("entry: ", StringComparison.Ordinal))
                .Select(row => row.Replace(key, "KEY", StringComparison.Ordinal)).Order(StringComparer.Ordinal),
        ];
    }

    [Fact]
    public void Derived_from_any_entry_on_the_ledger_is_the_same()
    {
        using var file = new DemoFile();
        var (before, connection) = (file.State(), file.Ledger.Connection);
        for (var number = 1; number <= DemoFile.Year.Count; number += Step)
        {
            Run(file, "BEGIN");
            using (var inside = new Snapshot(connection))
            {
                var from = new SaidLog(connection).All().ElementAt(number - 1);
                new Derivation(connection, inside, file.Ledger.Today).From(new(from.Date, from.Ord),
                    [], [], [], before: null);
                Assert.Equal(before, file.State());
            }

            Run(file, "ROLLBACK");
        }
    }

    [Fact]
    public void Names_stay_with_what_they_name()
    {
        using var file = new DemoFile();
        var session = DemoFile.Year.OfType<SessionLog>().First();
        var before = file.Ledger.SheetsOf(session.Session, file.Ledger.Today).Select(sheet => sheet.Negative).ToList();
        file.Accept(DemoFile.Amend(session.Key, new FieldChange(1, "fate", "reject")));
        var after = file.Ledger.SheetsOf(session.Session, file.Ledger.Today).Select(sheet => sheet.Negative).ToList();
        var first = session.Lines[0].Sheets;
        Assert.All(after.Take(first), Assert.Null);
        Assert.Equal(before.Skip(first), after.Skip(first));
        file.Accept(DemoFile.Amend(session.Key, new FieldChange(1, "fate", "negative")));
        Assert.Equal(before, file.Ledger.SheetsOf(session.Session, file.Ledger.Today).Select(sheet => sheet.Negative));
    }

    [Fact]
    public void A_change_that_a_later_entry_cannot_bear_is_refused_and_nothing_is_different()
    {
        using var file = new DemoFile();
        var first = DemoFile.Year.ToList()
            .FindIndex(entry => entry is Delivery delivery && delivery.Lines.Any(line => line.Item == "fen80")) + 1;
        var (bytes, state) = (File.ReadAllBytes(file.FilePath), file.State());
        var refusal = Assert.IsType<NotPosted>(file.Ledger.Post(DemoFile.Undo(first))).Refusal;
        Assert.Equal(RefusalKind.DependedOn, refusal.Kind);
        Assert.Matches(
            @"^entry \d+ of \d{4}-\d\d-\d\d \(.*\) would no longer hold: .*; take back or amend entry \d+ first$",
            refusal.Sentence);
        Assert.Equal(state, file.State());
        Assert.Equal(bytes, File.ReadAllBytes(file.FilePath));
    }

    [Fact]
    public void A_forgotten_session_is_recorded_after_its_bath_was_discarded()
    {
        using var file = new DemoFile();
        var sessions = DemoFile.Year.OfType<SessionLog>()
            .Where(held => held.Bath is { } bath && file.Ledger.Bath(bath, file.Ledger.Today)?.Discarded is not null)
            .ToList();
        var accepted = sessions.Select((session, i) => file.Ledger.Post(session with
        {
            Key = $"forgotten-{i}", Session = $"S9{i}", Plan = null, BooksDifference = true,
            Lines = [session.Lines[0] with { Item = "practice", Sheets = 1, Fate = Core.Sessions.Fate.Practice,
                From = null, Container = null }],
        })).OfType<Posted>().ToList();
        Assert.True(accepted.Count > 3, $"{accepted.Count} of {sessions.Count}");
        Assert.All(accepted,
            posted => Assert.NotNull(file.Ledger.Session(((SessionLog)posted.Posting.Entry).Session,
                posted.Posting.Entry.Date)));
        Assert.Empty(file.Ledger.Check(null, default).Problems);
    }

    /// <summary>
    /// A name that no entry uses any more is kept, so that it is never given again: no one may change it unseen.
    /// </summary>
    [Theory]
    [InlineData("number = number + 1000")]
    [InlineData("slot = 'sheet 99'")]
    [InlineData("series = 'negatives 1999'")]
    [InlineData("digest = 'x'")]
    public void An_altered_name_that_nothing_uses_is_found(string change)
    {
        using var file = new DemoFile();
        var session = DemoFile.Year.OfType<SessionLog>().First();
        file.Accept(DemoFile.Amend(session.Key, new FieldChange(1, "fate", "reject")));
        Run(file,
            $"UPDATE said_name SET {change} WHERE key = '{session.Key}' AND slot = (SELECT min(slot) FROM said_name "
                + $"WHERE key = '{session.Key}')");
        Assert.Contains(file.Ledger.Check(null, default).Problems,
            problem => problem.Contains("was altered since", StringComparison.Ordinal));
    }

    [Fact]
    public void Names_from_before_the_digests_have_theirs_from_the_next_entry_on()
    {
        using var file = new DemoFile();
        Run(file, "UPDATE said_name SET digest = ''");
        Assert.True(file.Ledger.Check(null, default).Ok);
        file.Accept(DemoFile.Undo(DemoFile.Year.ToList().FindIndex(entry => entry is KeeperNaming) + 1));
        Run(file, "UPDATE said_name SET number = number + 5000 WHERE key = (SELECT min(key) FROM said_name)");
        Assert.Contains(file.Ledger.Check(null, default).Problems,
            problem => problem.Contains("was altered since", StringComparison.Ordinal));
    }

    [Fact]
    public void Any_altered_value_is_found()
    {
        using var year = new DemoFile();
        year.Accept(
            DemoFile.Undo(year.Accept(DemoFile.Amend(DemoFile.Year.OfType<SessionLog>().First().Key,
                new FieldChange(0, "note", "x"))).Number));
        var columns = year.Ledger.Tables.Where(table => table != "draft" && year.Ledger.Rows(table).Any())
            .SelectMany(table => year.Ledger.Columns(table).Select(column => (table, column))).ToList();
        var (altered, unseen) = (0, new List<string>());
        for (var i = 0; i < columns.Count; i += Step)
        {
            using var file = new DemoFile(year);
            Run(file, "PRAGMA ignore_check_constraints = ON");
            Run(file, "PRAGMA foreign_keys = OFF");
            if (!Alter(file, columns[i].table, columns[i].column))
                continue;
            altered++;
            if (file.Ledger.Check(null, default) is { Ok: true, Words.Count: 0 })
                unseen.Add($"{columns[i].table}.{columns[i].column}");
        }

        Assert.True(unseen.Count == 0, string.Join(", ", unseen));
        Assert.True(altered > columns.Count / Step * 2 / 3, $"{altered} of {columns.Count / Step} were altered");
    }

    /// <summary>
    /// How an entry is told is no part of what must follow from what was said: another version may tell it otherwise.
    /// </summary>
    [Fact]
    public void A_file_that_tells_what_happened_in_other_words_is_in_order_and_is_told_in_these_when_it_is_mended()
    {
        using var file = new DemoFile();
        file.Accept(
            DemoFile.Undo(file.Accept(DemoFile.Amend(DemoFile.Year.OfType<SessionLog>().First().Key,
                new FieldChange(0, "note", "x"))).Number));
        var before = file.Ledger.Journal(file.Ledger.Today, null, 10_000).Select(entry => entry.Summary).ToList();
        Run(file,
            "UPDATE entry SET summary = 'earlier words: ' || summary WHERE kind IN ('session', 'undo', 'amendment')");
        var report = file.Ledger.Check(null, default);
        Assert.Equal((true, 0), (report.Ok, report.Mendable.Count));
        Assert.Contains("in other words than this version would, entry ", Assert.Single(report.Remarks),
            StringComparison.Ordinal);
        var mended = file.Ledger.Mend(null, default);
        Assert.Equal(report.Words, mended.Mended);
        Assert.Empty(mended.After.Remarks);
        Assert.NotNull(mended.Copy);
        Assert.Equal(before, file.Ledger.Journal(file.Ledger.Today, null, 10_000).Select(entry => entry.Summary));
    }

    private static bool Alter(DemoFile file, string table, string column)
    {
        try
        {
            return Run(file,
                $"""
                UPDATE "{table}" SET "{column}" = CASE
                    WHEN typeof("{column}") IN ('integer', 'real') THEN "{column}" + 1
                    WHEN date("{column}") IS "{column}" AND "{column}" IS NOT NULL THEN date("{column}", '+1 day')
                    ELSE coalesce("{column}", '') || '1' END
                WHERE ({Key(file, table)}) = (SELECT {Key(file, table)} FROM "{table}"
                    ORDER BY "{column}" IS NULL LIMIT 1 OFFSET (SELECT count("{column}") / 2 FROM "{table}"))
                """) == 1;
        }
        catch (SqliteException)
        {
            return false;
        }
    }

    private static string Key(DemoFile file, string table)
    {
        using var command = file.Ledger.Connection.CreateCommand();
        command.CommandText =
            $"SELECT group_concat('\"' || name || '\"') FROM pragma_table_info('{table}') WHERE pk > 0";
        return command.ExecuteScalar() as string ?? "rowid";
    }

    private static int Run(DemoFile file, string sql)
    {
        using var command = file.Ledger.Connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteNonQuery();
    }
}
