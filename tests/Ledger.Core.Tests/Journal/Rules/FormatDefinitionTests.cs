namespace Ledger.Core.Tests.Journal.Rules;

/// <summary>Formats of the user's own: what is accepted, and what follows from it.</summary>
public sealed class FormatDefinitionTests
{
    private const string Refused = """
        entry                                    | refused as  | because
        format format=                           | NotAccepted | a format needs a name
        format format=a_b                        | NotAccepted | up to 20 letters, digits, dots and dashes only
        format format=a-name-of-21-letters.      | NotAccepted | up to 20 letters, digits, dots and dashes only
        format format=5x7glass                   | NotAccepted | "5x7glass" is not accepted: the name of a format may hold
        format format=4x5ft                      | NotAccepted | what begins like a size must be one, such as 4x5 or 13x18cm
        format format=4x5in unit=roll            | NotAccepted | 4x5 is counted in sheets; give the other one a name of its own
        format unit=ml                           | NotAccepted | postcard must be counted in sheets or rolls
        format area=0.05_sqin                    | NotAccepted | the area of postcard must be from 0.1 sq in to 10000 sq in
        format area=10001_sqin                   | NotAccepted | the area of postcard must be from 0.1 sq in to 10000 sq in
        format format=120 area=76_sqin           | NotAccepted | 120 is counted in rolls; give the other one a name of its own
        format format=8x10 unit=roll             | NotAccepted | 8x10 is counted in sheets; give the other one a name of its own
        format format=120 area=76_sqin unit=roll | -           |
        format format=postcard area=134.75_cm2   | -           |
        """;

    [Fact]
    public void A_format_is_refused_for_its_first_fault() => Assert.All(Table.Read(Refused), row =>
    {
        var refusal = (Shelves.Stocked().Preview(EntryWords.Read(row["entry"])) as Refused)?.Refusal;
        Assert.Equal(row["refused as"], refusal?.Kind.ToString() ?? "-");
        Assert.Contains(row["because"], refusal?.Sentence ?? "", StringComparison.Ordinal);
    });

    [Theory]
    [InlineData("5x7glass")]
    [InlineData("glass-5x7")]
    [InlineData("Postcard")]
    [InlineData("4x5ft")]
    [InlineData("7x17in")]
    [InlineData("a-name-of-20-letters")]
    [InlineData("a-name-of-21-letters.")]
    public void What_can_be_defined_can_stand_in_the_settings_and_nothing_else(string code)
    {
        var ledger = Shelves.Stocked();
        var isDefined = ledger.Preview(EntryWords.Read($"format format={code}")) is Accepted;
        Assert.Equal(isDefined, BatchLimit.Read($"4 {code}=2") is not null);
        Assert.Equal(isDefined, FormatVolumes.Read($"{code}=600") is not null);
    }

    [Fact]
    public void A_size_is_one_format_however_it_is_spelled()
    {
        var ledger = Shelves.Stocked();
        ledger.Post("format format=4x5in area=19_sqin");
        var formats = ledger.Holdings.Formats;
        Assert.Equal((19m, 19m), (formats.Find("4x5").Area.SquareInches, formats.Find("4.0x5IN").Area.SquareInches));
        Assert.Equal("4x5",
            Assert.Single(formats.All, format => format.Code.StartsWith("4x5", StringComparison.Ordinal)).Code);
        Assert.Equal(3, BatchLimit.Read("4 4x5in=3")!.Of(Format.Parse("4x5")));
        Assert.Equal(600m, FormatVolumes.Read("4x5in=600")!.Of(Format.Parse("4x5"))!.Value.Millilitres);
    }

    [Fact]
    public void Another_area_counts_from_then_on_and_the_past_keeps_its_own()
    {
        var ledger = Shelves.WithBath();
        ledger.Post("session session=S1 line=4_fen80_25ml");
        Assert.Equal(320m, ledger.Holdings.Bath("F1")!.Worked.SquareInches);
        var posting = ledger.Post("format format=8x10 area=75_sqin");
        Assert.Equal(("a sheet of 8x10", "80 sq in", "75 sq in"),
            (posting.Effects[0].What, posting.Effects[0].Before, posting.Effects[0].After));
        ledger.Post("session session=S2 line=4_fen80_25ml");
        Assert.Equal(620m, ledger.Holdings.Bath("F1")!.Worked.SquareInches);
    }

    [Fact]
    public void Film_of_an_own_format_fits_the_holders_of_that_format_and_no_others()
    {
        var ledger = Shelves.Stocked();
        ledger.Post("format format=postcard area=134.75_cm2 date=2026-01-11");
        var format = ledger.Holdings.Formats.Find("postcard");
        ledger.Post(new HolderDefinition { Key = Some.Key(), Date = new(2026, 1, 11), Holder = "P01",
            Format = format });
        ledger.Post(new ItemDefinition
        {
            Key = Some.Key(), Date = new(2026, 1, 11),
            Item = new() { Code = "card", Name = "Card", Kind = Core.Stock.ItemKind.Film, Format = format,
                Unit = Unit.Sheet, Pack = new(25, Unit.Sheet) },
        });
        ledger.Post("delivery item=card date=2026-01-12");
        ledger.Post("format format=postcard area=20.5_sqin date=2026-01-13");
        Assert.Equal(20.5m, ledger.Holdings.Item("card")!.Format!.Area.SquareInches);
        ledger.Post("load sides=P01-1 from=card");
        var refused = Assert.IsType<Refused>(ledger.Preview(EntryWords.Read("load sides=P01-2 from=fen80")));
        Assert.Contains("fen80 is 8x10, and P01 takes postcard", refused.Refusal.Sentence, StringComparison.Ordinal);
    }
}
