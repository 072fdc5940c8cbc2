using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Tests.Import;

public class CellTests
{
    [Theory]
    [InlineData("2025-02-29")]
    [InlineData("12.05.2025")]
    [InlineData("2025-5-12")]
    [InlineData("2025-05-12T10:00")]
    [InlineData("9999-12-31")]
    public void A_date_that_is_none_is_told(string date) =>
        Assert.Equal(
            $"line 2, date: found \"{date}\"; accepted is a date that exists, written as 2026-03-15",
            Csv.Problem("deliveries", $"date,item,packs\n{date},pan,1\n").ToString());

    [Fact]
    public void A29th_of_february_of_a_leap_year_is_one() =>
        Assert.Equal(new(2028, 2, 29), Csv.One<Delivery>("deliveries",
            "date,item,packs,expires\n2025-05-12,pan,1,2028-02-29\n").Lines[0].ExpiresOn);

    [Theory]
    [InlineData("-1")]
    [InlineData("1.000.000")]
    [InlineData("1e3")]
    [InlineData("many")]
    [InlineData("1000000001")]
    [InlineData("99999999999999999999999999999999999")]
    public void A_number_that_is_none_is_told(string packs) =>
        Assert.Equal(
            new RowProblem(2, "packs", packs, "accepted is a number from 0.000001 to 10000 with at most 6 decimals"),
            Csv.Problem("deliveries", $"date;item;packs\n2025-05-12;pan;{packs}\n"));

    [Fact]
    public void A_decimal_comma_is_read_where_it_can_mean_one_thing_only()
    {
        Assert.Equal(1.5m, Csv.One<Delivery>("deliveries", "date;item;packs\n2025-05-12;pan;1,5\n").Lines[0].Packs);
        Assert.Equal(
            "line 2, packs: found \"1,500\"; accepted is 1.500 or 1500: the comma could mean either",
            Csv.Problem("deliveries", "date;item;packs\n2025-05-12;pan;1,500\n").ToString());
    }

    [Theory]
    [InlineData("deliveries", "date;item;packs\n2025-05-12;;1\n", "accepted is the item's code")]
    [InlineData("deliveries", "date;item;packs\n;pan;1\n", "accepted is a date that exists, written as 2026-03-15")]
    [InlineData("deliveries", "date;item;packs;price\n2025-05-12;pan;1;0.0000001\n",
        "accepted is an amount from 0 to 1000000000 with at most six decimals")]
    [InlineData("counts", "date;item;found;reason\n2025-05-12;pan;1.5;miscounted\n",
        "accepted is a whole number of sheets")]
    [InlineData("counts", "date;item;found;reason\n2025-05-12;syrup/1;1.0005;dregs\n",
        "accepted is ml with at most three decimals")]
    [InlineData("baths", "date;bath;item;working_ml\n2025-05-12;F1;syrup;1500.0005\n",
        "accepted is ml with at most three decimals")]
    [InlineData("sessions", "session;date;process;item;sheets\nS1;2025-05-12;film;pan;4.5\n",
        "accepted is a whole number from 1 to 1000")]
    [InlineData("sessions", "session;date;process;item;sheets;fate\nS1;2025-05-12;film;pan;4;lost\n",
        "accepted is negative, keeper, reject, test, practice or dummy")]
    [InlineData("processes", "process;step;role\nfilm;1;soup\n",
        "accepted is other, developer, stop, fixer, wash aid, wetting agent, toner, water, rc paper, fibre paper, "
            + "presoak, wash or final rinse")]
    [InlineData("items", "item;name;kind;pack;unit\npan;Pan;film;25;leaf\n", "accepted is ml, g, sheet, roll or piece")]
    [InlineData("items", "item;name;kind;pack;format\npan;Pan;film;25;8 by 10\n",
        "accepted is a format such as 4x5, 8x10, 13x18cm, 120, 135-36, 7x17in or 100x125mm")]
    [InlineData("items", "item;name;kind;unit;pack;capacity_basis\nfix;Fix;chemical;ml;1000;strict\n",
        "accepted is nothing: a basis stands only beside a capacity")]
    [InlineData("stock_solutions", "date,item,volume_ml,bottles,size_ml\n2025-05-12,syrup,1000,2,\n",
        "accepted is what one holds when it is full")]
    public void Each_column_says_what_it_accepts(string kind, string text, string accepted) =>
        Assert.Equal(accepted, Csv.Problem(kind, text).Accepted);

    [Fact]
    public void A_dilution_with_a_colon_is_asked_about() =>
        Assert.Equal(
            "line 2, dilution: found \"1:39\"; accepted is 1+39 if the second figure is the water, or 1+38 if it is "
                + "all parts together",
            Csv.Problem("items", "item,name,kind,unit,pack,dilution\nsyrup,Syrup,chemical,ml,1000,1:39\n").ToString());

    [Fact]
    public void A_long_cell_is_shown_short()
    {
        var problem = Csv.Problem("deliveries", $"date,item,packs\n2025-05-12,pan,\"{new string('9', 5000)}\n1\"\n");
        Assert.Equal(new string('9', 60) + "…", problem.Found);
    }

    [Fact]
    public void Text_that_was_made_harmless_for_a_spreadsheet_is_read_as_it_was() =>
        Assert.Equal("=old", Csv.One<Discard>("discards", "date,what,reason\n2025-05-12,F1,'=old\n").Reason);

    [Fact]
    public void A_quantity_may_be_written_with_or_without_a_blank()
    {
        const string text = "process,step,role,item,amount\nfilm,1,stop,powder,30g\nfilm,2,other,gloves,2 "
            + "pieces\nfilm,3,wetting agent,slip,5.5 ML\n";
        Assert.Equal(
            [Quantity.Of(30, Unit.Gram), Quantity.Of(2, Unit.Piece), Quantity.Of(5.5m, Unit.Millilitre)],
            Csv.One<ProcessDefinition>("processes", text).Steps.Select(step => step.Amount!.Value));
    }

    [Fact]
    public void A_culture_with_a_decimal_comma_changes_nothing()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = culture;
            Assert.Equal(162.5m, Csv.One<Delivery>("deliveries",
                "date;item;packs;price\n2025-05-12;pan;1;162.5\n").Lines[0].Price?.Amount);
            Assert.Equal(1.5m, Csv.One<Delivery>("deliveries",
                "date;item;packs;price\n2025-05-12;pan;1;1,5\n").Lines[0].Price?.Amount);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
