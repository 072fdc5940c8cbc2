using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Baths;

/// <summary>A jug in which used solutions wait to be handed over.</summary>
/// <param name="Place">Its number as a place.</param>
/// <param name="Code">What is written on it.</param>
/// <param name="Contents">What goes into it.</param>
/// <param name="Size">What it holds when full.</param>
/// <param name="StartedOn">The day it was started.</param>
public sealed record WasteJug(PlaceId Place, string Code, string Contents, Volume Size, LocalDate StartedOn)
{
    /// <summary>The kind of waste that it is for, as its contents tell.</summary>
    public WasteKind Waste => WasteKinds.Told(Contents) ?? WasteKind.Other;

    /// <summary>What is in it, the first one first.</summary>
    public IReadOnlyList<JugFill> Fills { get; init; } = [];

    /// <summary>The day it was handed over; null while it stands there.</summary>
    public LocalDate? HandedOverOn { get; init; }

    /// <summary>Where it went.</summary>
    public string HandedTo { get; init; } = "";

    /// <summary>How much is in it.</summary>
    public Volume Held => Fills.Aggregate(default(Volume), (sum, fill) => sum + fill.Volume);

    /// <summary>How much still fits.</summary>
    public Volume Room => Held < Size ? Size - Held : default;
}

/// <summary>Used solution in a jug.</summary>
/// <param name="Date">The day it went in.</param>
/// <param name="Volume">How much.</param>
/// <param name="What">What it was.</param>
/// <param name="Material">What had passed through it; null when it was no bath.</param>
public sealed record JugFill(LocalDate Date, Volume Volume, string What, BathMaterial? Material);
