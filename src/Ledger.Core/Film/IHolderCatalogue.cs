using Ledger.Core.Stock;

namespace Ledger.Core.Film;

/// <summary>
/// The holders of a ledger, looked up when they are asked for: whoever asks for one of thousands does not wait for the
/// others.
/// </summary>
public interface IHolderCatalogue
{
    /// <summary>The highest number of a holder so far.</summary>
    long LastHolder { get; }

    /// <summary>The holder of that name, or null.</summary>
    Holder? Holder(string code);

    /// <summary>The holder with the side of that name, such as E07-2, or null.</summary>
    Holder? HolderOf(string side);

    /// <summary>The holder with the side at that place, or null.</summary>
    Holder? HolderOf(PlaceId side);

    /// <summary>The names of all holders, in any order.</summary>
    IReadOnlyList<HolderName> Names();

    /// <summary>All holders, in any order.</summary>
    IReadOnlyList<Holder> All();
}

/// <summary>What a list of thousands says of a holder.</summary>
/// <param name="Code">Its name.</param>
/// <param name="Format">The code of its format.</param>
public sealed record HolderName(string Code, string Format);
