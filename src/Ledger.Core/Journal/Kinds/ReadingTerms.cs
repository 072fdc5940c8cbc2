using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Kinds;

/// <summary>What the reading of a value needs to know beside its text.</summary>
public sealed record ReadingTerms
{
    /// <summary>The day of recording; relative dates are seen from it.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>The item of a code, or null: quantities are read in its unit.</summary>
    public required Func<string, Item?> ItemOf { get; init; }

    /// <summary>The formats there are.</summary>
    public required FormatTable Formats { get; init; }

    /// <summary>The item that a container holds, or null.</summary>
    public Func<string, Item?> HeldIn { get; init; } = _ => null;

    /// <summary>
    /// Whether somebody typed it: a bare number is then in the user's unit, and dates may be relative. Else it stands
    /// in a column or a document, and a bare number is in the unit that the column names.
    /// </summary>
    public bool IsTyped { get; init; }

    /// <summary>The user's units.</summary>
    public MeasureStyle Style { get; init; } = MeasureStyle.Metric;

    /// <summary>Leaves dates where they are.</summary>
    public static Func<LocalDate, LocalDate> Unmoved { get; } = date => date;

    /// <summary>Moves a date that was read in time; dates stay where they are unless it says otherwise.</summary>
    public Func<LocalDate, LocalDate> Shift { get; init; } = Unmoved;

    /// <summary>The terms of somebody who types, with what the ledger holds.</summary>
    public static ReadingTerms Typed(Holdings holdings, LocalDate today) => Of(holdings, today) with { IsTyped = true };

    /// <summary>The terms of a document, with what the ledger holds.</summary>
    public static ReadingTerms Of(Holdings holdings, LocalDate today) => new()
    {
        Today = today,
        ItemOf = holdings.Item,
        Formats = holdings.Formats,
        HeldIn = code => holdings.Container(code) is { } container ? holdings.Item(container.Lot.Item) : null,
        Style = holdings.Settings.Style,
    };

    /// <summary>
    /// What an item, or the item in a container, is counted in; a code of a container that is not known is read by the
    /// item before its stroke; a holder and a box of exposed sheets hold sheets.
    /// </summary>
    public Unit UnitOf(string what) =>
        (ItemOf(what) ?? HeldIn(what)
            ?? (what.IndexOf('/', StringComparison.Ordinal) is > 0 and var at ? ItemOf(what[..at]) : null))?.Unit
        ?? Unit.Sheet;
}
