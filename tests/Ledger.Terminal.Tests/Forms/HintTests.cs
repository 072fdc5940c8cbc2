using Ledger.Core.Journal;
using Ledger.Core.Journal.Kinds;
using Ledger.Core.Reordering;
using Ledger.Storage;
using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Screens;
using Ledger.Terminal.Pages;
using Ledger.Terminal.Tests.Fakes;
using NodaTime;
using NodaTime.Extensions;
using NodaTime.Testing;

namespace Ledger.Terminal.Tests.Forms;

public sealed class HintTests
{
    /// <summary>The two lines of the hint on a screen of 80 columns, broken at a word.</summary>
    private const int Room = 2 * 78 - 12;

    [Fact]
    public void No_hint_of_any_form_is_longer_than_its_line()
    {
        var folder = Directory.CreateTempSubdirectory("trayledger").FullName;
        using var ledger = ReadyLedger.DemoYear(Path.Combine(folder, "ledger.db"), new FakeClock(Instant.FromUtc(2026, 3, 15, 9, 0)).InUtc());
        var forms = Everyone(ledger).ToList();
        var every = typeof(Form).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Form)) && !type.IsAbstract);
        Assert.Equal([], every.Except(forms.Select(form => form.GetType())).Select(type => type.Name));

        var hints = forms.SelectMany(form => form.Fields).Select(field => field.Hint)
            .Concat(EntryKinds.All.SelectMany(kind => kind.AllFields.Concat(kind.Line?.Fields ?? [])).Select(field => ScreenText.Sentence(field.Help)))
            .Distinct().ToList();
        Assert.True(hints.Count > 150, $"only {hints.Count} hints were found");
        Assert.Equal([], hints.Where(hint => hint.Length > Room));
        Assert.Equal([], forms.SelectMany(TooWide));
        ledger.Dispose();
        Directory.Delete(folder, recursive: true);
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

    private static IEnumerable<Form> Everyone(LedgerFile ledger)
    {
        var holdings = ledger.HoldingsOn(ledger.Today);
        var process = holdings.Processes.First();
        var upkeep = new FakeUpkeep();
        yield return new SettingForm(ledger, Setting.Named("warn-days")!);
        yield return new BackUpForm(upkeep, "copy.db");
        yield return new BathForm(ledger, null);
        yield return new CopyForm(new("Shelf", new ShelfModel(ledger), () => []), new FakePaper());
        yield return new LabelForm(new("S22", (_, _) => ""), new FakePaper(), LabelPlace.Plain, _ => { });
        yield return new CalendarForm(upkeep, "days.ics");
        yield return new CopyProcessForm(ledger, process);
        yield return new UndoForm(ledger, ledger.Journal(ledger.Today, null, 1)[0]);
        var entry = ledger.Journal(ledger.Today, null, 1)[0];
        yield return new AmendForm(ledger, entry, ledger.Said(entry.Number)!);
        yield return new DiscardForm(ledger, "F4");
        yield return new DropStepForm(ledger, process, process.Steps[0]);
        yield return new ExportForm(upkeep, "tables");
        yield return new ImportForm(upkeep);
        yield return new ItemForm(ledger, null);
        yield return new OrderForm(ledger, ReorderReading.Of(ledger, holdings), "fen80");
        yield return new PlanForm(ledger);
        yield return new DeliveryForm(ledger, "fen80");
        yield return new SessionForm(ledger);
        yield return new StepForm(ledger, process.Name, process.Steps[0]);
        yield return new DiscardForm(ledger, "fen80");
        foreach (var item in holdings.Items)
            yield return new ItemForm(ledger, item.Code);
        foreach (var kind in EntryKinds.All)
            yield return new KindForm(ledger, kind.Name);
    }
}
