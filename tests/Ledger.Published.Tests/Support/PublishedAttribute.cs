namespace Ledger.Published.Tests.Support;

/// <summary>
/// Where values that a test checks were published: title, publisher or place, year. It stands on a table, of which it
/// names the columns that are printed, or on a test, of which it says how many printed values it checks. What carries
/// no source is common practice, arithmetic or this project's choice, says so, and is not counted.
/// </summary>
/// <param name="source">Title, publisher or place, year, page or section.</param>
[AttributeUsage(AttributeTargets.Field | AttributeTargets.Method, AllowMultiple = true)]
internal sealed class PublishedAttribute(string source) : Attribute
{
    /// <summary>The source.</summary>
    public string Source => source;

    /// <summary>Of a table: the columns that are printed there, with commas between.</summary>
    public string Columns { get; init; } = "";

    /// <summary>Of a test: how many printed values it checks, each of which fails it when the code is wrong.</summary>
    public int Values { get; init; }
}
