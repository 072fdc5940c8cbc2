namespace Ledger.App.Output;

/// <summary>A column of a table.</summary>
/// <param name="Title">Its title.</param>
/// <param name="IsRight">Whether its cells end at one edge, as figures do.</param>
internal sealed record Column(string Title, bool IsRight)
{
    public static Column Left(string title) => new(title, false);

    public static Column Right(string title) => new(title, true);
}
