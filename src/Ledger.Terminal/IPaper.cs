namespace Ledger.Terminal;

/// <summary>
/// Puts pages on paper for the screens. Each method writes a page and answers with a sentence: where it lies, or why
/// there is none.
/// </summary>
public interface IPaper
{
    /// <summary>The mixing sheet of an open plan.</summary>
    string MixingSheet(string plan);

    /// <summary>The sleeve labels of a session's negatives.</summary>
    string SleeveLabels(string session, LabelPlace place);

    /// <summary>The label of a bottle, of a bath or of a waste jug; of a box of unexposed film, its seal.</summary>
    string BottleLabel(string what, LabelPlace place);

    /// <summary>The seal of a box of exposed sheets, by what its label says: fen80 N.</summary>
    string BoxLabel(string box, LabelPlace place);

    /// <summary>The papers that labels can lie on, plain paper first.</summary>
    IReadOnlyList<string> LabelPapers { get; }

    /// <summary>The grids that a paper of labels commonly has; none for plain paper.</summary>
    IReadOnlyList<string> LabelGrids(string paper);

    /// <summary>Why no label can lie in such a place, in a sentence; null where labels can.</summary>
    string? LabelProblem(LabelPlace place);

    /// <summary>The tally slip of a bath.</summary>
    string TallySlip(string bath);

    /// <summary>What something came through, and what else came through that.</summary>
    string Trace(string what);

    /// <summary>What shares a fault, worst first, to be worked off with a pencil.</summary>
    string CheckList(string what);

    /// <summary>A list of the sheets that words find.</summary>
    string Sheets(string words);

    /// <summary>The sheets that words find as CSV, a row for each with all that is known of it.</summary>
    string SheetsCsv(string words);

    /// <summary>The wall card.</summary>
    string WallCard();

    /// <summary>A table as CSV, as an export writes it.</summary>
    /// <param name="headings">The columns.</param>
    /// <param name="rows">The rows, each with a cell for every column.</param>
    string Csv(IReadOnlyList<string> headings, IReadOnlyList<IReadOnlyList<string>> rows);

    /// <summary>Writes a text into a file that is not there yet.</summary>
    /// <returns>Whether it was written, and where it lies or why there is none.</returns>
    (bool IsKept, string Sentence) Keep(string text, string path);
}
