namespace Ledger.Core.Stock;

/// <summary>A lot's number in the ledger.</summary>
/// <param name="Value">Positive, given when the lot is first posted.</param>
public readonly record struct LotId(long Value);

/// <summary>A place's number in the ledger: a container, a bath, or one of the single <see cref="Places"/>.</summary>
/// <param name="Value">Positive; below <see cref="Places.FirstFree"/> for the single places.</param>
public readonly record struct PlaceId(long Value)
{
    /// <summary>Whether something can really stand there, so that it can never hold less than nothing.</summary>
    public bool IsOnHand => Value >= Places.FirstFree;
}

/// <summary>An item's number in the ledger.</summary>
/// <param name="Value">Positive.</param>
public readonly record struct ItemId(long Value);

/// <summary>A process's number in the ledger.</summary>
/// <param name="Value">Positive.</param>
public readonly record struct ProcessId(long Value);
