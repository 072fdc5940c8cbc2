using Ledger.Core.Stock;

namespace Ledger.Core.Film;

/// <summary>One side of a holder: a slot for one sheet. A holder of six sheets has six of them.</summary>
/// <param name="Place">Its number as a place.</param>
/// <param name="Holder">The holder's name.</param>
/// <param name="Name">The side's own name: 1, 2, A, left…</param>
public sealed record HolderSide(PlaceId Place, string Holder, string Name)
{
    /// <summary>What it is called everywhere: E07-2.</summary>
    public string Code => $"{Holder}-{Name}";

    /// <summary>Why it is out of service; null while it is in service.</summary>
    public string? OutOfService { get; init; }

    /// <summary>The last day on which a sheet came or went.</summary>
    public LocalDate? LastUsedOn { get; init; }

    /// <summary>The last day on which a sheet was taken out.</summary>
    public LocalDate? LastEmptiedOn { get; init; }

    /// <summary>The sheets it has spoiled, by cause.</summary>
    public IReadOnlyList<SideFault> Faults { get; init; } = [];

    /// <summary>The spoiled sheets whose cause is the holder's: leaks, scratches, dust.</summary>
    public int OwnFaults => Faults.Where(fault => fault.Cause.IsOfTheHolder()).Sum(fault => fault.Sheets);
}

/// <summary>Sheets that a side has spoiled.</summary>
/// <param name="Cause">How.</param>
/// <param name="Sheets">How many.</param>
public sealed record SideFault(RejectCause Cause, int Sheets);
