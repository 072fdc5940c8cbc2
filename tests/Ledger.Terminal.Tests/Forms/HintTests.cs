using Ledger.Terminal.Blocks;

namespace Ledger.Terminal.Tests.Forms;

public sealed class HintTests : OnTheDemoYear
{
    /// <summary>The two lines of the hint on a screen of 80 columns, broken at a word.</summary>
    private const int Room = 2 * 78 - 12;

    [Fact]
    public void No_hint_of_any_form_is_longer_than_its_line()
    {
        var forms = Everyone().ToList();
        var every = typeof(Form).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Form)) && !type.IsAbstract);
        Assert.Equal([], every.Except(forms.Select(form => form.GetType())).Select(type => type.Name));

        var hints = forms.SelectMany(form => form.Fields).Select(field => field.Hint)
            .Concat(EntryKinds.All.SelectMany(kind => kind.AllFields.Concat(kind.Line?.Fields ?? []))
                .Select(field => ScreenText.Sentence(field.Help)))
            .Distinct().ToList();
        Assert.True(hints.Count > 150, $"only {hints.Count} hints were found");
        Assert.Equal([], hints.Where(hint => hint.Length > Room));
        Assert.Equal([], forms.SelectMany(TooWide));
    }

    /// <summary>The rows of a form that do not fit 80 columns, as they are laid out.</summary>
    private static IEnumerable<string> TooWide(Form form)
    {
        var labels = FieldRows.LabelsOf(form.Rows);
        foreach (var row in form.Rows)
        {
            var column = 0;
            foreach (var field in row)
                column = FieldRows.Behind(field, FieldRows.BoxAt(field, column, labels));
            if (column - 2 > 79)
                yield return $"{form.GetType().Name}: {row[0].Label} ends at {column - 2}";
        }
    }

    private IEnumerable<Form> Everyone()
    {
        var holdings = Ledger.HoldingsOn(Ledger.Today);
        var process = holdings.Processes.First();
        var upkeep = new FakeUpkeep();
        yield return new SettingForm(Ledger, Setting.Named("warn-days")!);
        yield return new BackUpForm(upkeep, "copy.db");
        yield return new BathForm(Ledger, null);
        yield return new LabelForm(
            new("F4", (paper, place) => paper.BottleLabel("F4", place)), new FakePaper(), LabelPlace.Plain, _ => { });
        yield return new CopyForm(new("Shelf", new ShelfModel(Ledger), () => []), new FakePaper());
        yield return new LabelForm(new("S22", (_, _) => ""), new FakePaper(), LabelPlace.Plain, _ => { });
        yield return new CalendarForm(upkeep, "days.ics");
        yield return new CopyProcessForm(Ledger, process);
        yield return new UndoForm(Ledger, Ledger.Journal(Ledger.Today, null, 1)[0]);
        var entry = Ledger.Journal(Ledger.Today, null, 1)[0];
        yield return new AmendForm(Ledger, entry, Ledger.Said(entry.Number)!);
        yield return new DiscardForm(Ledger, "F4");
        yield return new DropStepForm(Ledger, process, process.Steps[0]);
        yield return new ExportForm(upkeep, "tables");
        yield return new ImportForm(upkeep);
        yield return new ItemForm(Ledger, null);
        yield return new OrderForm(Ledger, ReorderReading.Of(Ledger, holdings), "fen80");
        yield return new PlanForm(Ledger);
        yield return new DeliveryForm(Ledger, "fen80");
        yield return new SessionForm(Ledger);
        yield return new StepForm(Ledger, process.Name, process.Steps[0]);
        yield return new DiscardForm(Ledger, "fen80");
        foreach (var item in holdings.Items)
            yield return new ItemForm(Ledger, item.Code);
        foreach (var kind in EntryKinds.All)
            yield return new KindForm(Ledger, kind.Name);
    }
}
