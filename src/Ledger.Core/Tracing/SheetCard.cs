using Ledger.Core.Film;
using Ledger.Core.Sessions;

namespace Ledger.Core.Tracing;

/// <summary>What is known of a sheet at a glance: enough to find it, to tell it from others, and to take it in the
/// hand.</summary>
public sealed record SheetCard
{
    /// <summary>Its number in the ledger.</summary>
    public required SheetId Id { get; init; }

    /// <summary>The number it is filed under; null when it never was a negative.</summary>
    public string? Negative { get; init; }

    /// <summary>What it is called: its negative's number, or its own.</summary>
    public string Name => Negative ?? Id.ToString();

    /// <summary>The film's code.</summary>
    public required string Item { get; init; }

    /// <summary>The film's format.</summary>
    public string Format { get; init; } = "";

    /// <summary>The emulsion number; may be empty.</summary>
    public string Emulsion { get; init; } = "";

    /// <summary>The box it came out of.</summary>
    public required string Box { get; init; }

    /// <summary>The side it was loaded into; null when it went straight into the tray.</summary>
    public string? Side { get; init; }

    /// <summary>The day it was loaded.</summary>
    public LocalDate? LoadedOn { get; init; }

    /// <summary>The day it was exposed.</summary>
    public LocalDate? ExposedOn { get; init; }

    /// <summary>The development group; may be empty.</summary>
    public string Group { get; init; } = "";

    /// <summary>What is on the picture; may be empty.</summary>
    public string Subject { get; init; } = "";

    /// <summary>The session; null before its development.</summary>
    public string? Session { get; init; }

    /// <summary>The number of the session's entry.</summary>
    public long? SessionEntry { get; init; }

    /// <summary>The day it was developed.</summary>
    public LocalDate? DevelopedOn { get; init; }

    /// <summary>The batch it was in, counting from 1.</summary>
    public int? Batch { get; init; }

    /// <summary>The process of its session.</summary>
    public string? Process { get; init; }

    /// <summary>The baths that its session went through, the one that it is filed under first.</summary>
    public IReadOnlyList<string> Baths { get; init; } = [];

    /// <summary>What became of it by now; null before its development.</summary>
    public Fate? Fate { get; init; }

    /// <summary>What spoiled it, if that is known.</summary>
    public RejectCause? Cause { get; init; }

    /// <summary>Where it is: a holder side, a box of exposed sheets, filed negatives, rejects, discarded.</summary>
    public required string Place { get; init; }

    /// <summary>Whether it sits in a holder or a box of exposed sheets now.</summary>
    public bool IsUndeveloped { get; init; }

    /// <summary>Where it is filed, in the user's words; null where nobody said.</summary>
    public string? FiledIn { get; init; }

    /// <summary>The last that was done to it or found out about it; null for nothing.</summary>
    public SheetFinding? LastFinding { get; init; }

    /// <summary>The day that tells most of it: of its exposure, else of its development, else of its loading.</summary>
    public LocalDate? Date => ExposedOn ?? DevelopedOn ?? LoadedOn;

    /// <summary>Where to find it: where it is filed, else where it is.</summary>
    public string Where => FiledIn ?? Place;

    /// <summary>What became of it, in words: negative, reject (under-fixed); where it waits before.</summary>
    public string FateText => Fate is not { } fate ? (ExposedOn is null ? "unexposed" : "exposed") : Cause is { } cause
        ? $"{fate.Name()} ({cause.Name()})" : fate.Name();
}
