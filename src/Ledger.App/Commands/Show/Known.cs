namespace Ledger.App.Commands.Show;

/// <summary>Says which names would have been accepted, those first that may have been meant.</summary>
internal static class Known
{
    public static string Names(string written, IEnumerable<string> names, string what)
    {
        var all = names.ToList();
        var known = all.Take(20).ToList();
        return Spelling.Meant(written, all)
            + (known.Count == 0 ? $"none is {what}" : $"{what}: {string.Join(", ", known)}");
    }
}
