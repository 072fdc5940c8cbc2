namespace Ledger.Terminal;

/// <summary>
/// Puts pages on paper for the screens. Each method writes a page and answers with a sentence: where it lies, or why there is none.
/// </summary>
public interface IPaper
{
    /// <summary>The mixing sheet of an open plan.</summary>
    string MixingSheet(string plan);

    /// <summary>The sleeve labels of a session's negatives.</summary>
    string SleeveLabels(string session);

    /// <summary>The label of a bottle, of a bath or of a waste jug.</summary>
    string BottleLabel(string what);

    /// <summary>The seal of a box of exposed sheets, by what its label says: fen80 N.</summary>
    string BoxLabel(string box);

    /// <summary>The tally slip of a bath.</summary>
    string TallySlip(string bath);

    /// <summary>The wall card.</summary>
    string WallCard();
}
