namespace Ledger.Exchange.Import.Rows;

/// <summary>What is wrong with a row, or with a whole file.</summary>
/// <param name="Line">The line on which the row begins, counting from 1 with the header; 0 when the whole file is
/// meant.</param>
/// <param name="Column">The column; empty when the whole row is meant.</param>
/// <param name="Found">What stands there.</param>
/// <param name="Accepted">What is accepted there.</param>
public sealed record RowProblem(int Line, string Column, string Found, string Accepted)
{
    /// <summary>
    /// The problem as a sentence: line 7, date: found "31/12/2025"; accepted is a date such as 2026-03-15.
    /// </summary>
    public override string ToString() => $"{Where}: found {What}; {Accepted}";

    private string Where => Line == 0 ? "the file" : Column.Length == 0 ? $"line {Line}" : $"line {Line}, {Column}";

    private string What => Column.Length == 0 ? Found : Found.Length == 0 ? "nothing" : $"\"{Found}\"";
}
