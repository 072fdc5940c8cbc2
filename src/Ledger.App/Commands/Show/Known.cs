namespace Ledger.App.Commands.Show;

/// <summary>Lists names that would have been accepted.</summary>
internal static class Known
{
    public static string Names(IEnumerable<string> names, string what)
    {
        var known = names.Take(20).ToList();
        return known.Count == 0 ? $"none is {what}" : $"{what}: {string.Join(", ", known)}";
    }
}
