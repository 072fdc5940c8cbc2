using Ledger.Core.Baths;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Kinds;

/// <summary>record clearing-test, clearing_tests.csv: how long a strip of film takes to clear in a fixer.</summary>
internal static class ClearingTestKind
{
    private static readonly Field<string> Bath = new("bath", Notations.Known("BATH"))
    {
        Help = "the fixer for film", Example = "F4", IsNeeded = true, IsArgument = true, Width = 10,
        Choices = (_, holdings) => Fixers(holdings).Select(bath => bath.Code),
        Offer = (_, holdings) => Fixers(holdings).FirstOrDefault()?.Code,
    };

    private static readonly Field<string> Film = new("film", Notations.Known("FILM"))
    {
        Help = "the film the strip is of", Example = "fen80", IsNeeded = true, IsArgument = true, Width = 16,
        Choices = Offered.SheetFilms,
        Offer = (read, holdings) => read.Find(Bath) is { } bath && holdings.Bath(bath)?.ClearingTests is [.., var last]
            ? last.Film : Offered.SheetFilms(read, holdings).FirstOrDefault(),
    };

    private static readonly Field<decimal> Seconds = new("seconds", Notations.Number(0.1m, 36_000, 1, "SECONDS"))
    {
        Label = "Cleared in, seconds", Help = "the time until it cleared, in seconds", Example = "55",
        IsNeeded = true, IsArgument = true, Width = 8,
    };

    private static readonly Field<bool> Fresh = new("fresh", Notations.YesNo)
    {
        Label = "The bath is fresh", Help = "the bath is fresh: later tests of this film are measured against it",
        Example = "no", Width = 4,
    };

    private static readonly Field<int> Sheets = new("sheets", Notations.Whole(0, 1000))
    {
        Label = "Sheets cut up", Help = "sheets cut up for it, taken from stock; none when a scrap was used",
        Example = "1", Width = 6,
    };

    private static readonly Field<string> From = new("from", Notations.Known("BOX"))
    {
        Label = "From box", Help = "the box they come from; otherwise the one used first",
        Example = "fen80/3", Choices = Offered.Containers,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<ClearingTest>
    {
        Name = "clearing-test",
        Caution = UsualCautions.Handling,
        File = "clearing_tests",
        Title = "Clearing test",
        Purpose = "Records how long an undeveloped strip of film took to clear in a fixer.",
        Details =
        [
            "The setting exhausted-multiple says at how many times the fresh time a bath is exhausted, and "
                + "fixing-multiple for how many times the clearing time to fix.",
        ],
        Example = "F4 fen80 55",
        Bound =
        [
            new(Bath, test => test.Bath), new(Film, test => test.Film), new(Seconds, test => test.Seconds),
            new(Fresh, test => test.IsFresh ? true : null), new(Sheets, test => test.Sheets == 0 ? null : test.Sheets),
            new(From, test => test.Container),
        ],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Bath = values.Of(Bath), Film = values.Of(Film),
            Seconds = values.Of(Seconds), IsFresh = values.Of(Fresh), Sheets = values.Of(Sheets),
            Container = values.Find(From),
        },
    };

    private static IEnumerable<Bath> Fixers(Holdings holdings) =>
        holdings.Baths.Where(bath => bath is { Role: ItemRole.Fixer, Material: BathMaterial.Film });
}
