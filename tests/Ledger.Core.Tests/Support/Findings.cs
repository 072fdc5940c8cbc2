namespace Ledger.Core.Tests.Support;

/// <summary>A failure of a scan shows every finding in full.</summary>
internal static class Findings
{
    public static void None(IEnumerable<string> findings)
    {
        var all = findings.ToList();
        Assert.True(all.Count == 0, string.Join('\n', all));
    }
}
