namespace Ledger.Storage.Tests;

/// <summary>What was typed and not saved stands beside the ledger.</summary>
public sealed class DraftTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public void Dispose() => _file.Dispose();

    [Fact]
    public void What_is_kept_of_a_form_outlives_the_program_until_it_is_let_go()
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
    public void It_is_no_part_of_the_journal_of_the_export_or_of_what_is_proved()
    {
        var before = _file.Ledger.Journal(_file.Ledger.Today, null, 10).Count;
        _file.Ledger.Keep("session", "{}");

        Assert.Equal(before, _file.Ledger.Journal(_file.Ledger.Today, null, 10).Count);
        Assert.DoesNotContain("draft", _file.Ledger.Tables);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }
}
