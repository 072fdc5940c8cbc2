using System.IO.Compression;
using System.Runtime.CompilerServices;

namespace Ledger.Storage.Tests;

/// <summary>
/// The file explains itself to someone who has no program but SQLite: all that it holds is described in it, and its
/// views say what the program says. They are read by a plain connection, which has none of the program's functions.
/// </summary>
public sealed class ReadMeTests : IDisposable
{
    private static readonly LocalDate End = new(2030, 12, 31);
    private readonly TemporaryLedger _file = new();

    public void Dispose() => _file.Dispose();

    [Fact]
    public void Every_table_view_and_column_is_described_and_nothing_else_is()
    {
        var there = Plain(
            """
            SELECT m.name, c.name FROM sqlite_schema m, pragma_table_info(m.name) c
            WHERE m.type IN ('table', 'view') AND m.name NOT LIKE 'sqlite\_%' ESCAPE '\'
            UNION SELECT name, '' FROM sqlite_schema
            WHERE type IN ('table', 'view') AND name NOT LIKE 'sqlite\_%' ESCAPE '\'
            ORDER BY 1, 2
            """);
        var described = Plain("""SELECT "table", "column" FROM read_me ORDER BY 1, 2""");
        Assert.Empty(there.Except(described));
        Assert.Empty(described.Except(there));
        Assert.True(described.Count > 500);
    }

    /// <summary>Money and areas are kept in units that nobody would guess, so none of them may lack its unit.</summary>
    [Fact]
    public void What_is_kept_in_small_units_names_them()
    {
        Assert.Empty(Plain(
            """
            SELECT "table", "column" FROM read_me WHERE unit = '' AND "column" IN (
                'quantity', 'value', 'cost', 'price', 'area', 'weighted', 'size', 'pack', 'working_volume',
                'capacity_per_litre', 'film_cost')
            AND "table" <> 'setting'
            """));
    }

    [Fact]
    public void The_shelf_is_the_programs()
    {
        foreach (var ledger in Ledgers())
        {
            var shelf = ledger.HoldingsOn(End).Containers.Select(container => Row(
                container.Code, container.Lot.Item, container.Held.Value, container.Held.Unit.Name(), container.Storage,
                container.Lot.IsPriced ? Decimal(container.Value) : null,
                container.OpenedOn is { } opened ? Dates.Text(opened) : null));
            AssertSame(shelf, "SELECT container, item, amount, unit, storage, cost, opened_on FROM shelf");
        }
    }

    [Fact]
    public void The_sheets_are_the_programs()
    {
        foreach (var ledger in Ledgers())
        {
            var sheets = ledger.Cards(new SheetSearch(), End).Select(card => Row(
                card.Id.Value, card.Item, card.Box, card.Side, card.Negative, card.Session, card.Place, card.FiledIn,
                card.Fate is { } fate ? Fates.Name(fate) : null,
                card.ExposedOn is { } exposed ? Dates.Text(exposed) : null));
            AssertSame(
                sheets,
                """
                SELECT sheet, film, box, holder_side, negative, session, is_now_in, filed_in, fate, exposed_on
                FROM sheets
                """);
        }
    }

    [Fact]
    public void The_sessions_are_the_programs()
    {
        foreach (var ledger in Ledgers())
        {
            var sessions = ledger.Sessions(End, null, 1000).Select(session => Row(
                session.Session, Dates.Text(session.Date), session.Process, session.Bath,
                session.Developer.Microlitres / 1000m, session.Sheets, Math.Round(session.Area.SquareInches, 4),
                session.Lines.Sum(line => Decimal(line.Cost))));
            AssertSame(
                sessions,
                "SELECT session, date, process, bath, developer_ml, sheets, area_sq_in, film_cost FROM sessions");
        }
    }

    [Fact]
    public void The_baths_in_use_are_the_programs()
    {
        foreach (var ledger in Ledgers())
        {
            var baths = ledger.HoldingsOn(End).Baths.Select(bath => Row(
                bath.Code, bath.Item, Dates.Text(bath.MixedOn), bath.WorkingVolume.Microlitres / 1000m, bath.PairedWith,
                Math.Round(bath.Worked.SquareInches, 4), Math.Round(bath.WorkedWeighted.SquareInches, 4),
                bath.TotalCapacity is { } capacity ? Math.Round(capacity.SquareInches, 4) : null, Decimal(bath.Value)));
            AssertSame(baths,
                """
                SELECT bath, item, mixed_on, volume_ml, paired_with, passed_sq_in, counted_sq_in, capacity_sq_in, cost
                FROM baths WHERE discarded_on IS NULL
                """);
        }
    }

    [Fact]
    public void The_costs_are_the_programs_and_nothing_is_lost_between_them()
    {
        foreach (var ledger in Ledgers())
        {
            var sessions = new List<SessionUse>();
            var costs = ledger.Costs(new(1900, 1, 1), End, recosted: session =>
            {
                sessions.Add(session);
                return session;
            });
            Assert.True(costs.Bought > Money.Zero);
            Assert.Equal(Decimal(costs.Bought), Sum("purpose = 'bought'"));
            Assert.Equal(Decimal(costs.Discarded), Sum("purpose = 'discarded'"));
            Assert.Equal(Decimal(costs.Lost), Sum("purpose = 'lost or gained'"));
            Assert.Equal(Decimal(costs.OnHandAfter), Sum("purpose = 'bought'") - Sum("purpose <> 'bought'"));
            Assert.NotEmpty(sessions);
            foreach (var session in sessions)
                Assert.Equal(
                    Decimal(session.Developer) + Decimal(session.OtherChemistry) + Decimal(session.Supplies),
                    Sum($"purpose = 'used up' AND entry = {session.Entry}"));
        }
    }

    [Fact]
    public void The_journal_is_the_programs()
    {
        foreach (var ledger in Ledgers())
            AssertSame(
                ledger.Journal(End, null, 10_000).Select(entry =>
                    Row(entry.Number, Dates.Text(entry.Date), entry.Kind, entry.Summary, entry.Note)),
                "SELECT entry, date, kind, summary, note FROM journal");
    }

    [Fact]
    public void Nothing_of_it_troubles_the_check()
    {
        foreach (var ledger in Ledgers())
            Assert.Empty(ledger.Check(null, default).Problems);
    }

    [Theory]
    [InlineData("UPDATE read_me SET meaning = 'soup' WHERE \"table\" = 'movement' AND \"column\" = 'value'")]
    [InlineData("DELETE FROM read_me WHERE \"table\" = 'bath'")]
    [InlineData("INSERT INTO read_me VALUES ('soup', '', '', 'soup')")]
    public void What_it_says_otherwise_is_found_and_mended(string sql)
    {
        Some.Stock(_file);
        _file.Run(sql);
        var found = _file.Ledger.Check(null, default);
        Assert.Contains(found.Problems, problem => problem.Contains("read_me", StringComparison.Ordinal));
        Assert.Equal(found.Problems, found.Mendable);
        Assert.Empty(_file.Ledger.Mend(null, default).After.Problems);
    }

    /// <summary>A small ledger with a delivery of no price and an undo; the demo year of an earlier version.</summary>
    private IEnumerable<LedgerFile> Ledgers([CallerFilePath] string here = "")
    {
        Some.Stock(_file);
        var undone = _file.Accept(Some.Session()).Number;
        _file.Accept(Some.Delivery("pan") with { Lines = [new() { Item = "pan", Packs = 0.4m }] });
        _file.Accept(new Core.Journal.Entries.Undo
        {
            Key = Some.Key(), Date = Some.Day(3, 2), Number = undone, Reason = "mistyped",
        });
        _file.Accept(Some.Session("S02", 5, Fate.Reject));
        yield return _file.Ledger;
        _file.Replace(path =>
        {
            using var packed = File.OpenRead(
                Path.Combine(Path.GetDirectoryName(here)!, "Fixtures", "0.2.0-demo.db.gz"));
            using var unpacked = new GZipStream(packed, CompressionMode.Decompress);
            using var target = File.Create(path);
            unpacked.CopyTo(target);
        });
        yield return _file.Ledger;
    }

    private void AssertSame(IEnumerable<string> read, string sql)
    {
        var expected = read.Order(StringComparer.Ordinal).ToList();
        Assert.NotEmpty(expected);
        Assert.Equal(expected, Plain(sql).Order(StringComparer.Ordinal));
    }

    private decimal Sum(string condition) => decimal.Parse(
        Plain($"SELECT round(coalesce(sum(cost), 0), 6) FROM costs WHERE {condition}")[0],
        CultureInfo.InvariantCulture);

    private static decimal Decimal(Money money) => money.Millionths / 1_000_000m;

    /// <summary>A row as text: numbers without needless noughts, nothing as a dash.</summary>
    private static string Row(params object?[] values) => string.Join(" | ", values.Select(value => value switch
    {
        null => "-",
        decimal or double or long or int => Convert.ToDecimal(value, CultureInfo.InvariantCulture)
            .ToString("0.######", CultureInfo.InvariantCulture),
        _ => value.ToString() is "" or null ? "-" : value.ToString(),
    }));

    /// <summary>What a program reads that knows nothing of this one.</summary>
    private List<string> Plain(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={_file.FilePath};Pooling=False;Mode=ReadOnly");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        using var reader = command.ExecuteReader();
        var rows = new List<string>();
        while (reader.Read())
            rows.Add(Row([.. Enumerable.Range(0, reader.FieldCount).Select(i =>
                reader.IsDBNull(i) ? null : reader.GetValue(i))]));
        return rows;
    }
}
