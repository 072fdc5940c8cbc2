using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Baths;

/// <summary>A jug in which used solutions wait to be handed over.</summary>
public sealed record WasteJug
{
    /// <summary>Its number as a place.</summary>
    public required PlaceId Place { get; init; }

    /// <summary>What is written on it.</summary>
    public required string Code { get; init; }

    /// <summary>What goes into it.</summary>
    public required string Contents { get; init; }

    /// <summary>The kind of waste that it is for, as its contents tell.</summary>
    public WasteKind Waste => WasteKinds.Told(Contents) ?? WasteKind.Other;

    /// <summary>What it holds when full.</summary>
    public required Volume Size { get; init; }

    /// <summary>The day it was started.</summary>
    public required LocalDate StartedOn { get; init; }

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
