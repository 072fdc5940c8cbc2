using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Finder;

/// <summary>
/// A line of the list of actions: something that can be done, or something that has a name and can be gone to.
/// </summary>
/// <param name="Name">What it is called.</param>
/// <param name="Place">The screen it belongs to; empty for what is the same everywhere.</param>
/// <param name="Key">The key that does the same on that screen; empty for none.</param>
/// <param name="Meaning">What it does, or what it is.</param>
/// <param name="Steps">What choosing it does, step by step: a later step sees what the ones before have brought
/// up.</param>
internal sealed record Finding(string Name, string Place, string Key, string Meaning, Func<IEnumerable<Step?>> Steps)
{
    /// <summary>Other words by which it is found.</summary>
    public string FindBy { get; init; } = "";
}
