using Ledger.Core.Journal.Entries;
using Ledger.Core.Journal.Kinds;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>A kind of file: its name, its columns, and what its rows mean.</summary>
/// <param name="name">The name.</param>
/// <param name="needed">The columns that must be there.</param>
/// <param name="optional">The columns that may be there.</param>
internal abstract class FileKind(string name, string[] needed, string[] optional)
{
    /// <summary>All kinds, in the order in which entries of the same day are posted.</summary>
    public static IReadOnlyList<FileKind> All { get; } =
    [
        new FormatsFile(),
        new ItemsFile(),
        new ProcessesFile(),
        new HoldersFile(),
        new OrdersFile(),
        new OrderChangesFile(),
        new DeliveriesFile(),
        new StorageMovesFile(),
        new OpeningsFile(),
        new ExposureIndexesFile(),
        new CleaningsFile(),
        new LoadsFile(),
        new ExposuresFile(),
        new UnloadsFile(),
        new DecantingsFile(),
        new StockSolutionsFile(),
        new JugsFile(),
        new BathsFile(),
        new RotationsFile(),
        new TopUpsFile(),
        new KindFile(EntryKinds.Named("count")!),
        new DiscardsFile(),
        new SessionsFile(),
        new PrintsFile(),
        new KindFile(EntryKinds.Named("clearing-test")!),
        new ObservationsFile(),
        new ServicesFile(),
        new KeepersFile(),
        new PriceRisesFile(),
        new PlansFile(),
        new UndoneFile(),
    ];

    public string Name => name;

    public IReadOnlyList<string> NeededColumns => needed;

    public IReadOnlyList<string> Columns { get; } = [.. needed, .. optional];

    /// <summary>Whether its rows name no day.</summary>
    public virtual bool IsUndated => false;

    /// <summary>The entries that the rows make. A row that cannot be read makes none and says why.</summary>
    public abstract IEnumerable<SourcedEntry> Entries(IEnumerable<Row> rows, ImportTerms terms);
}

/// <summary>A kind of file in which each row is an entry of its own.</summary>
internal abstract class RowFileKind(string name, string[] needed, string[] optional) : FileKind(name, needed, optional)
{
    public override IEnumerable<SourcedEntry> Entries(IEnumerable<Row> rows, ImportTerms terms)
    {
        var keys = new RowKeys(Name, Columns);
        foreach (var row in rows)
        {
            var entry = Read(row, keys, terms);
            if (row.IsGood)
                yield return new(row.Line, entry);
        }
    }

    /// <summary>The entry of a row; it does not count when the row turns out bad.</summary>
    protected abstract Entry Read(Row row, RowKeys keys, ImportTerms terms);
}
