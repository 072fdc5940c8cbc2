namespace Ledger.Core.Film;

/// <summary>What spoiled a sheet.</summary>
public enum RejectCause
{
    /// <summary>Dust on the film: clear spots.</summary>
    Dust,

    /// <summary>Scratched in the holder or the tray.</summary>
    Scratch,

    /// <summary>Nothing on it.</summary>
    Unexposed,

    /// <summary>Exposed twice.</summary>
    DoubleExposure,

    /// <summary>Fogged: a leaking holder, an open box.</summary>
    Fogged,

    /// <summary>Loaded backwards: the base side to the lens.</summary>
    LoadedBackwards,

    /// <summary>Developed unevenly.</summary>
    Uneven,

    /// <summary>Fixed too short or in an exhausted bath.</summary>
    UnderFixed,
}

/// <summary>The causes' names as they stand in CSV and JSON.</summary>
public static class RejectCauses
{
    /// <summary>dust, scratch, unexposed, double exposure, fogged, loaded backwards, uneven, under-fixed.</summary>
    public static IReadOnlyList<string> Names { get; } =
        ["dust", "scratch", "unexposed", "double exposure", "fogged", "loaded backwards", "uneven", "under-fixed"];

    /// <summary>The cause's name.</summary>
    public static string Name(this RejectCause cause) => Names[(int)cause];

    /// <summary>The cause of that name, or null.</summary>
    public static RejectCause? Named(string name)
    {
        for (var i = 0; i < Names.Count; i++)
            if (Names[i].Equals(name.Trim(), StringComparison.OrdinalIgnoreCase))
                return (RejectCause)i;
        return null;
    }

    /// <summary>Whether a holder does it: then it counts against the side that the sheet came from.</summary>
    public static bool IsOfTheHolder(this RejectCause cause) =>
        cause is RejectCause.Dust or RejectCause.Scratch or RejectCause.Fogged;
}
