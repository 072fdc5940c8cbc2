namespace Ledger.Exchange.Import;

/// <summary>A column of a CSV file.</summary>
/// <param name="Name">Its name in the header row.</param>
/// <param name="Meaning">What stands in it, without a full stop.</param>
/// <param name="Example">An example of a value.</param>
/// <param name="IsNeeded">Whether it must be there.</param>
public sealed record CsvColumn(string Name, string Meaning, string Example, bool IsNeeded);
