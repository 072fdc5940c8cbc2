using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>
/// The keys that mean the same on every screen, named once: they act, stand on the key lines and in the help.
/// </summary>
internal sealed class CommonKeys
{
    private const int LookBack = 50;
    private readonly ILedger _ledger;

    public CommonKeys(ILedger ledger, IReadOnlyList<TableModel> screens)
    {
        _ledger = ledger;
        Work =
        [
            ScreenAction.Of(KeyTable.Session, "logs a session", _ => new FormStep(new SessionForm(ledger))),
            ScreenAction.Of(KeyTable.Bath, "mixes a bath", _ => new FormStep(new BathForm(ledger, null))),
            ScreenAction.Of(KeyTable.Receive, "records a delivery", _ => new FormStep(new DeliveryForm(ledger, null))),
            ScreenAction.Of(KeyTable.Plan, "shows what is planned", _ => new TableStep(new PlansModel(ledger))),
            TakeBackLast = ScreenAction.Of(
                KeyTable.Undo,
                "takes back the last entry; on a screen that has it for its rows, what the selected one is there "
                    + "by", _ => TakeBack()),
        ];
        Screens = [.. screens.Select((screen, i) => Digit(i + 1, screen.Name))];
    }

    /// <summary>The forms, and undo.</summary>
    public IReadOnlyList<ScreenAction> Work { get; }

    /// <summary>Takes back what was saved last.</summary>
    public ScreenAction TakeBackLast { get; }

    /// <summary>The main screens' digits.</summary>
    public IReadOnlyList<ScreenAction> Screens { get; }

    /// <summary>The entry that was saved last here.</summary>
    public long? LastSaved { get; set; }

    /// <summary>Blanks the screen; a blank is typed in a form, so that there another key does it.</summary>
    public static KeyHint Blank(bool typing) => typing ? new(Key.F9, "F9", "Blank") : new(Key.Space, "Space", "Blank");

    /// <summary>Opens the help.</summary>
    public static KeyHint Help { get; } = new(Key.F1, "F1", "Help");

    /// <summary>Opens the list of actions.</summary>
    public static KeyHint Actions { get; } = new(Key.F2, "F2", "Actions");

    /// <summary>Goes back.</summary>
    public static KeyHint Back { get; } = new(Key.Esc, "Esc", "Back");

    /// <summary>Quits.</summary>
    public static KeyHint Quit { get; } = new(Key.Q.WithCtrl, "Ctrl+Q", "Quit");

    /// <summary>What the help says of them; in a form, letters and digits are typed.</summary>
    public IEnumerable<(string Name, string Meaning)> Meanings(bool typing)
    {
        if (!typing)
        {
            yield return ($"1 to {Screens.Count}", string.Join(", ", Screens.Select(screen => screen.Label)));
            foreach (var key in Work)
                yield return (key.Name, key.Meaning);
            yield return ("Space",
                "blanks the screen until Ctrl+L is pressed; a black screen still glows, so leave it outside or "
                    + "covered");
            yield return ("Enter", "opens what is selected");
        }

        yield return ("Tab",
            typing ? "goes to the next field" : "goes from the table to its details, where the arrows scroll");
        yield return ("F2", typing
            ? "lists what can be done here; a few letters find it"
            : "lists every action of every screen, and all that has a name; a few letters find it");
        yield return ("F9", "blanks the screen, in a form too");
        yield return ("Esc", "goes back");
        yield return ("F1", "this help");
        yield return ("Ctrl+Q", "quits");
    }

    private static ScreenAction Digit(int digit, string screen) =>
        ScreenAction.Screen(digit.ToString(CultureInfo.InvariantCulture)[0], screen);

    private Step TakeBack()
    {
        var latest = _ledger.Journal(_ledger.Today, LastSaved + 1, LookBack);
        return latest.FirstOrDefault(entry => entry.UndoneBy is null
            && (entry.Undoes is null || entry.Number == LastSaved)) is { } entry
            ? new FormStep(new UndoForm(_ledger, entry))
            : new MessageStep("There is no entry to take back.");
    }
}
