using System.Collections;
using System.Reflection;
using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Core.Reordering;
using Ledger.Exchange.Import;
using Ledger.Storage;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Tests.Fakes;
using NodaTime;
using NodaTime.Extensions;
using NodaTime.Testing;

namespace Ledger.Terminal.Tests.Forms;

public sealed class HintTests
{
    /// <summary>The line of the hint on a screen of 80 columns.</summary>
    private const int Room = 78;

    [Fact]
    public void No_hint_of_any_form_is_longer_than_its_line()
    {
        var folder = Directory.CreateTempSubdirectory("trayledger").FullName;
        using var ledger = LedgerFile.Open(Path.Combine(folder, "ledger.db"), new FakeClock(Instant.FromUtc(2026, 3, 15, 9, 0)).InUtc());
        ledger.Import(DemoYear.Read(ledger.Today), dryRun: false, progress: null, CancellationToken.None);
        var forms = Everyone(ledger).ToList();
        var every = typeof(Form).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Form)) && !type.IsAbstract);
        Assert.Equal([], every.Except(forms.Select(form => form.GetType())).Select(type => type.Name));

        var hints = forms.SelectMany(form => Fields(form, []).Select(field => $"{form.GetType().Name}: {field.Hint}")).Distinct().ToList();
        Assert.True(hints.Count > 150, $"only {hints.Count} hints were found");
        Assert.Equal([], hints.Where(hint => hint.Length - hint.IndexOf(':', StringComparison.Ordinal) - 2 > Room));
        Assert.Equal([], forms.SelectMany(TooWide));
        ledger.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>The rows of a form that do not fit 80 columns, as they are laid out.</summary>
    private static IEnumerable<string> TooWide(Form form)
    {
        var labels = form.Rows.Max(row => row[0].Kind == FieldKind.Tick ? 0 : row[0].Label.Length) + 1;
        foreach (var row in form.Rows)
        {
            var column = 0;
            foreach (var field in row)
                column = field.Kind == FieldKind.Tick ? Math.Max(column, labels) + field.Label.Length + 6
                    : column + (column == 0 ? labels : field.Label.Length + 1) + field.Width + 2;
            if (column - 2 > 79)
                yield return $"{form.GetType().Name}: {row[0].Label} ends at {column - 2}";
        }
    }

    private static IEnumerable<Form> Everyone(LedgerFile ledger)
    {
        var holdings = ledger.HoldingsOn(ledger.Today);
        var box = holdings.ContainersOf("fen80").First().Code;
        var process = holdings.Processes.First();
        var upkeep = new FakeUpkeep();
        yield return new SettingForm(ledger, Setting.Named("warn-days")!);
        yield return new BackUpForm(upkeep, "copy.db");
        yield return new BathForm(ledger, null);
        yield return new BathNoteForm(ledger, "F4");
        yield return new CalendarForm(upkeep, "days.ics");
        yield return new CleaningForm(ledger, null);
        yield return new ClearingTestForm(ledger, "F4");
        yield return new CopyProcessForm(ledger, process);
        yield return new UndoForm(ledger, ledger.Journal(ledger.Today, null, 1)[0]);
        yield return new CountForm(ledger, "fen80");
        yield return new DecantingForm(ledger, "syrup");
        yield return new DiscardForm(ledger, "F4");
        yield return new DropStepForm(ledger, process, process.Steps[0]);
        yield return new ExportForm(upkeep, "tables");
        yield return new ExposureForm(ledger, null);
        yield return new FormatForm(ledger, Format.Parse("8x10"));
        yield return new HolderForm(ledger);
        yield return new ImportForm(upkeep);
        yield return new ItemForm(ledger, null);
        yield return new JugStartForm(ledger);
        yield return new JugFillingForm(ledger, "J1");
        yield return new JugHandoverForm(ledger, "J1");
        yield return new KeeperForm(ledger, null);
        yield return new LoadForm(ledger, null);
        yield return new OpeningForm(ledger, "fen80");
        yield return new OrderCancellationForm(ledger, "fen80");
        yield return new OrderForm(ledger, ReorderReading.Of(ledger, holdings), "fen80");
        yield return new OrderNewsForm(ledger, "fen80");
        yield return new OrderTermsForm(ledger, "fen80");
        yield return new PlanEndingForm(ledger, "plan");
        yield return new PlanForm(ledger);
        yield return new PriceRiseForm(ledger, "fen80");
        yield return new PrintForm(ledger);
        yield return new DeliveryForm(ledger, "fen80");
        yield return new RotationForm(ledger, "F4");
        yield return new ServiceForm(ledger, null);
        yield return new SessionForm(ledger);
        yield return new ExposureIndexForm(ledger, box);
        yield return new StepForm(ledger, process.Name, process.Steps[0]);
        yield return new StockSolutionForm(ledger, "syrup");
        yield return new StorageForm(ledger, box);
        yield return new TopUpForm(ledger, "F4");
        yield return new UnloadForm(ledger, null);
    }

    /// <summary>All fields that a form or a part of it has, those too that it does not show yet.</summary>
    private static IEnumerable<FormField> Fields(object part, HashSet<object> seen)
    {
        if (!seen.Add(part))
            return [];
        if (part is FormField field)
            return [field];
        if (part is IEnumerable parts and not string)
            return parts.Cast<object>().Where(IsPart).SelectMany(one => Fields(one, seen));
        return Members(part.GetType()).Select(member => member.GetValue(part)).OfType<object>().Where(IsPart).SelectMany(one => Fields(one, seen));
    }

    private static bool IsPart(object one) => one switch
    {
        string or Delegate => false,
        IEnumerable => one.GetType().FullName!.Contains(typeof(Form).Namespace!, StringComparison.Ordinal),
        _ => one.GetType().Namespace == typeof(Form).Namespace,
    };

    private static IEnumerable<FieldInfo> Members(Type? type) => type is null ? []
        : type.GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly).Concat(Members(type.BaseType));
}
