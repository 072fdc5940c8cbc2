namespace Ledger.Core.Tests.Measures;

public sealed class DatesTests
{
    [Fact]
    public void A_date_is_written_in_ISO_8601() => Assert.Equal("2026-03-05", Dates.Text(new LocalDate(2026, 3, 5)));

    [Theory]
    [InlineData("2024-02-29", true)]
    [InlineData(" 2024-02-29 ", true)]
    [InlineData("2025-02-29", false)]
    [InlineData("2026-13-01", false)]
    [InlineData("2026-3-5", false)]
    [InlineData("05.03.2026", false)]
    [InlineData("03/05/2026", false)]
    [InlineData("2026-03-05T10:00", false)]
    [InlineData("", false)]
    [InlineData("today", false)]
    public void Only_a_day_that_exists_is_read(string text, bool isRead) =>
        Assert.Equal(isRead, Dates.Parse(text) is not null);
}
