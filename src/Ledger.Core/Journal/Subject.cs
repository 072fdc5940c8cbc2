namespace Ledger.Core.Journal;

/// <summary>Something that entries are about, by its name.</summary>
/// <param name="Kind">What sort of thing it is.</param>
/// <param name="Name">Its name, in any case.</param>
public sealed record Subject(SubjectKind Kind, string Name);

/// <summary>What sort of thing entries can be about.</summary>
public enum SubjectKind
{
    /// <summary>A film, chemical or supply.</summary>
    Item,

    /// <summary>A format of film or paper.</summary>
    Format,

    /// <summary>A process.</summary>
    Process,

    /// <summary>A setting of the whole ledger.</summary>
    Setting,

    /// <summary>A film holder with its sides.</summary>
    Holder,

    /// <summary>A box, bottle, bath, waste jug, box of exposed sheets or side of a holder.</summary>
    Place,

    /// <summary>A sheet of film, by its number.</summary>
    Sheet,

    /// <summary>A session of developing.</summary>
    Session,

    /// <summary>A session of printing.</summary>
    PrintSession,

    /// <summary>A plan that is open.</summary>
    Plan,

    /// <summary>An entry itself, by its number; about it are those that take it back or amend it.</summary>
    Entry,
}
