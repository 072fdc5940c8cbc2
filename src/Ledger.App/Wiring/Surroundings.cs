namespace Ledger.App.Wiring;

/// <summary>
/// What the program meets outside itself: streams, clock, environment, and a person at a terminal or none.
/// </summary>
internal sealed record Surroundings
{
    /// <summary>Where results go.</summary>
    public required TextWriter Out { get; init; }

    /// <summary>Where messages and remarks go.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>Where a file named "-" is read from.</summary>
    public required Func<Stream> In { get; init; }

    /// <summary>Sends bytes to the results as they are.</summary>
    public Action<Stream> Bytes { get; init; } = _ => throw new InvalidOperationException(
        "these surroundings take text alone");

    /// <summary>The clock and the zone that say which day it is.</summary>
    public required ZonedClock Clock { get; init; }

    /// <summary>The environment's variables.</summary>
    public required Func<string, string?> Variable { get; init; }

    /// <summary>The columns that text may take.</summary>
    public int Width { get; init; } = 80;

    /// <summary>Whether somebody watches the messages, so that long work may show how far it is.</summary>
    public bool IsWatched { get; init; }

    /// <summary>From its first use on, an interrupt cancels the work in hand instead of killing the program.</summary>
    public Func<CancellationToken> Interrupts { get; init; } = () => CancellationToken.None;

    /// <summary>The number of the signal that came; the interrupt's own where none is known.</summary>
    public Func<int> Signal { get; init; } = () => 2;

    /// <summary>The terminal screens; null where there is no terminal.</summary>
    public Func<IScreens?> Screens { get; init; } = () => null;
}
