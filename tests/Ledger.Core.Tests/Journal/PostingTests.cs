namespace Ledger.Core.Tests.Journal;

public sealed class PostingTests
{
    [Fact]
    public void A_session_posts()
    {
        var ledger = Shelves.WithBath();
        var posting = ledger.Post("session line=pan100:4");
        Assert.Equal("session S1: 4 pan100, 320 sq in through F1", posting.Summary);
        Assert.Equal(ledger.Balances(), ledger.Held());
    }
}
