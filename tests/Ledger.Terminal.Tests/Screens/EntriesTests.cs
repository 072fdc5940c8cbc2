namespace Ledger.Terminal.Tests.Screens;

/// <summary>What is shown leads to the entries behind it: they are put right and taken back from there.</summary>
public sealed class EntriesTests : OnTheDemoYear
{
    public EntriesTests() => Look(100, 40);

    [Fact]
    public void U_takes_an_item_out_that_nothing_uses()
    {
        Ledger.Post(new ItemDefinition
        {
            Key = Some.Key(), Date = Ledger.Today,
            Item = new() { Code = "spare", Name = "Spare tank", Kind = ItemKind.Supply, Unit = Unit.Piece,
                Pack = new(1, Unit.Piece) },
        });
        Screen.Shell.Poll();

        Select('2', "spare");
        var form = Screen.Type("u").Text;
        Assert.StartsWith(" Undo entry", Screen.Title);
        Assert.DoesNotContain("cannot be saved", form);
        Screen.Press(Key.F8);

        Assert.Null(Ledger.HoldingsOn(Ledger.Today).Item("spare"));
        Assert.DoesNotContain("spare", string.Join('\n', Screen.Lines[3..20]));
    }

    [Theory]
    [InlineData('2', "fen80", "packs of fen80")]
    [InlineData('7', "E01", "cleaned E01")]
    public void U_on_what_is_used_names_what_depends_on_it(char digit, string name, string depends)
    {
        Select(digit, name);
        var said = OneLine(Screen.Type("u").Text);

        Assert.Contains("This cannot be saved", said);
        Assert.Matches($"Entry [0-9]+ of [0-9-]+ \\(.*{depends}.*\\) would no longer hold", said);
    }

    [Fact]
    public void U_on_a_process_that_a_plan_or_session_uses_names_that_and_U_on_a_usual_format_says_why_not()
    {
        Screen.Find("processes");
        Assert.Matches("Entry [0-9]+ of .* would no longer hold", OneLine(Screen.Type("u").Text));

        Screen.Press(Key.Esc, Key.Esc).Find("formats");
        Assert.Contains("is a usual format", Screen.Type("u").Text);
    }

    [Fact]
    public void E_on_a_session_puts_its_entry_right_and_shows_what_it_said_beside_what_it_says_now()
    {
        var session = Ledger.Sessions(Ledger.Today, null, 1)[0];
        Screen.Type("4e");
        Assert.StartsWith($" Amend entry {session.Number}", Screen.Title);
        Assert.DoesNotContain("Before -> after", Screen.Text);

        var form = Assert.IsType<Terminal.Forms.FormPage>(Screen.Shell.Page).Form;
        form.Fields.Last(field => field.Label == "Note").Type("the tap was cold");
        Screen.Shell.Page.Refresh();
        var shown = Screen.Text;
        Assert.Contains("What it said -> what it says now", shown);
        Assert.Matches($"Note +{(session.Note.Length == 0 ? "\\(nothing\\)" : session.Note[..4])}.*-> the tap was cold",
            OneLine(shown));
        Assert.DoesNotContain("Nothing on the shelf changes", shown);

        Screen.Press(Key.F8);
        Assert.Equal("the tap was cold", Ledger.Session(session.Session, Ledger.Today)!.Note);
    }

    [Theory]
    [InlineData('2', "fen80")]
    [InlineData('3', "F5")]
    [InlineData('4', "S22")]
    [InlineData('7', "E01")]
    [InlineData('8', "syrup")]
    public void A_stop_shows_the_entries_about_a_thing_and_E_puts_any_of_them_right(char digit, string name)
    {
        Select(digit, name);
        Screen.Type("j");

        Assert.StartsWith($" Entries about {name}", Screen.Title);
        var table = Assert.IsType<TablePage>(Screen.Shell.Page);
        Assert.True(table.Model.Count > 0, Screen.Text);
        Assert.StartsWith(" Amend entry", Screen.Type("e").Title);
        Screen.Press(Key.Esc);
        Assert.StartsWith(" Undo entry", Screen.Type("u").Title);
    }

    [Theory]
    [InlineData('3', "F5", "rotation")]
    [InlineData('7', "E01", "holder")]
    public void E_on_a_bath_or_holder_is_the_entry_that_it_is_there_by(char digit, string name, string kind)
    {
        Select(digit, name);
        Screen.Type("e");

        Assert.StartsWith(" Amend entry ", Screen.Title);
        var number = long.Parse(Screen.Title.Trim().Split([' ', ':'])[2],
            System.Globalization.CultureInfo.InvariantCulture);
        var entry = Assert.Single(Ledger.Journal(Ledger.Today, number + 1, 1));
        Assert.Equal(kind, entry.Kind);
        Assert.Contains(name, entry.Summary);
    }

    [Fact]
    public void A_box_leads_to_its_delivery_whose_price_is_put_right()
    {
        Select('2', "fen80");
        Screen.Press(Key.Enter).Type("e");

        Assert.Contains("Price", Screen.Text);
        Assert.Matches("Amend entry [0-9]+: .*fen80", Screen.Title);
    }

    [Fact]
    public void While_it_is_said_that_U_takes_the_saved_entry_back_it_does()
    {
        Select('2', "fen80");
        Screen.Type("c");
        var form = Assert.IsType<Terminal.Forms.FormPage>(Screen.Shell.Page).Form;
        form.Fields.First(field => field.Label == "Found").Type("40 sheets");
        form.Fields.First(field => field.Label == "Reason").Type("fell down");
        Screen.Press(Key.F8);
        Assert.True(Screen.Text.Contains("U takes it back.", StringComparison.Ordinal), Screen.Text);

        Assert.Contains("counted fen80", Screen.Type("u").Title);
    }

    /// <summary>What was taken back last is what U brings back, not some entry before it.</summary>
    [Fact]
    public void U_after_an_undo_takes_that_undo_back()
    {
        var before = Ledger.Journal(Ledger.Today, null, 1)[0].Number;
        Select('2', "gloves");
        Screen.Type("c");
        var form = Assert.IsType<Terminal.Forms.FormPage>(Screen.Shell.Page).Form;
        form.Fields.First(field => field.Label == "Found").Type("3 pieces");
        form.Fields.First(field => field.Label == "Reason").Type("fell down");
        Screen.Press(Key.F8).Type("u").Press(Key.F8);
        Assert.True(Screen.Text.Contains("U takes it back.", StringComparison.Ordinal), Screen.Text);

        Assert.Contains($"Undo entry {before + 2}: took back entry {before + 1}", Screen.Type("u").Title);
        Screen.Press(Key.F8);
        Assert.Null(Ledger.Journal(Ledger.Today, before + 2, 1)[0].UndoneBy);
    }

    /// <summary>
    /// What changes the past is derived from there on: once when the typing pauses, not with each key; and saving
    /// derives it to judge it and to write it, without trying out an undo of it.
    /// </summary>
    [Fact]
    public void The_past_is_worked_out_when_the_typing_pauses_and_not_after_saving()
    {
        var counted = CountedLedger.Of(Ledger, out var ledger);
        using var screen = new Screen(ledger, 100, 40);
        screen.Type("2/gloves").Press(Key.Enter).Type("c");
        var form = Assert.IsType<Terminal.Forms.FormPage>(screen.Shell.Page).Form;
        form.Fields.First(field => field.Label == "Date").Type("2026-02-01");
        form.Fields.First(field => field.Label == "Reason").Type("fell down");
        counted.Previews.Clear();
        screen.Type("12");
        Assert.Empty(counted.Previews);
        Assert.True(screen.Text.Contains("28 pieces -> 10 pieces", StringComparison.Ordinal), screen.Text);
        Assert.Equal(Ledger.Today.PlusDays(-42), Assert.IsType<StockCount>(Assert.Single(counted.Previews)).Date);
        screen.Press(Key.F8);
        Assert.True(screen.Text.Contains("U takes it back.", StringComparison.Ordinal), screen.Text);
        Assert.All(counted.Previews, entry => Assert.IsType<StockCount>(entry));
        Assert.Equal(2, counted.Previews.Count);
    }

    [Fact]
    public void Entries_about_a_thing_come_in_pages()
    {
        var item = new Subject(SubjectKind.Item, "fen80");
        var all = Ledger.EntriesAbout(item, null, 1000);
        Assert.True(all.Count > 20);

        var paged = new List<JournalEntry>();
        while (Ledger.EntriesAbout(item, paged.LastOrDefault()?.Number, 7) is { Count: > 0 } page)
            paged.AddRange(page);

        Assert.Equal(all.Select(entry => entry.Number), paged.Select(entry => entry.Number));
        Assert.Equal(all.OrderByDescending(entry => entry.Number), all);
        Assert.Equal("item", all[^1].Kind);
    }

    [Fact]
    public void Whatever_is_shown_has_the_entry_that_it_is_there_by()
    {
        var holdings = Ledger.HoldingsOn(Ledger.Today);
        List<Subject> subjects =
        [
            .. holdings.Items.Select(item => new Subject(SubjectKind.Item, item.Code)),
            .. holdings.Processes.Select(process => new Subject(SubjectKind.Process, process.Name)),
            .. holdings.Film.Holders.Select(holder => new Subject(SubjectKind.Holder, holder.Code)),
            .. holdings.Containers.Select(container => new Subject(SubjectKind.Place, container.Code)),
            .. holdings.Baths.Select(bath => new Subject(SubjectKind.Place, bath.Code)),
            .. holdings.Jugs.Select(jug => new Subject(SubjectKind.Place, jug.Code)),
            .. holdings.Film.ExposedBoxes.Select(box => new Subject(SubjectKind.Place, box.Code)),
            .. holdings.Film.Sheets.Select(sheet => new Subject(SubjectKind.Sheet, sheet.Id.ToString())),
            .. holdings.Plans.Select(plan => new Subject(SubjectKind.Plan, plan.Name)),
            .. Ledger.Sessions(Ledger.Today, null,
                100).Select(session => new Subject(SubjectKind.Session, session.Session)),
            .. Ledger.Prints(Ledger.Today, null,
                100).Select(print => new Subject(SubjectKind.PrintSession, print.Session)),
        ];
        Assert.All(Enum.GetValues<SubjectKind>().Except([SubjectKind.Format, SubjectKind.Setting, SubjectKind.Entry]),
            kind => Assert.Contains(subjects, one => one.Kind == kind));
        Assert.All(subjects, subject =>
        {
            var own = Ledger.EntryOf(subject);
            Assert.True(own is not null, $"{subject.Kind} {subject.Name} has no entry");
            Assert.Contains(own.Number, Ledger.EntriesAbout(subject, null, 1000).Select(entry => entry.Number));
        });
    }

    private void Select(char digit, string name)
    {
        Screen.Type(digit.ToString());
        var model = Assert.IsType<TablePage>(Screen.Shell.Page).Model;
        model.SelectedId = name;
        Screen.Shell.Page.Refresh();
        Assert.Equal(name, model.IdOf(model.SelectedRow));
    }

    private static string OneLine(string text) =>
        string.Join(' ', text.Split([' ', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
