using Ledger.Storage.Tests.Support;

namespace Ledger.Storage.Tests;

/// <summary>What was typed and not saved stands beside the ledger.</summary>
public sealed class DraftTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public void Dispose() => _file.Dispose();

    [Fact]
    public void WhatIsKeptOfAFormOutlivesTheProgramUntilItIsLetGo()
    {
        _file.Ledger.Keep("session", """{"sheets":"4"}""");
        _file.Ledger.Keep("session", """{"sheets":"7"}""");
        _file.Reopen();
        Assert.Equal("""{"sheets":"7"}""", _file.Ledger.Draft("session"));
        Assert.Null(_file.Ledger.Draft("bath F4"));

        _file.Ledger.Keep("session", null);
        Assert.Null(_file.Ledger.Draft("session"));
    }

    [Fact]
    public void ItIsNoPartOfTheJournalOfTheExportOrOfWhatIsProved()
    {
        var before = _file.Ledger.Journal(_file.Ledger.Today, null, 10).Count;
        _file.Ledger.Keep("session", "{}");

        Assert.Equal(before, _file.Ledger.Journal(_file.Ledger.Today, null, 10).Count);
        Assert.DoesNotContain("draft", _file.Ledger.Tables);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }
}
