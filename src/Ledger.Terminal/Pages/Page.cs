using Ledger.Terminal.Blocks;

namespace Ledger.Terminal.Pages;

/// <summary>What is on the desk: a table with its details, a form, or the help.</summary>
internal abstract class Page : View
{
    protected Page()
    {
        Width = Dim.Fill();
        Height = Dim.Fill();
        CanFocus = true;
    }

    /// <summary>The name in the title line.</summary>
    public abstract string Heading { get; }

    /// <summary>What matters of what is shown, in a sentence; empty for nothing.</summary>
    public virtual string Headline => "";

    /// <summary>What it is for, in sentences.</summary>
    public abstract IReadOnlyList<string> Purpose { get; }

    /// <summary>What it does, shown with the demo year; empty for nothing.</summary>
    public virtual string Example => "";

    /// <summary>
    /// What it names its columns or fields, with what stands beside them: where a word of the trade may need
    /// explaining.
    /// </summary>
    public virtual IEnumerable<string> Labels => [];

    /// <summary>What can be done on it.</summary>
    public abstract IReadOnlyList<ScreenAction> Actions { get; }

    /// <summary>
    /// Whether letters, digits and the space bar are typed here, so that only function keys are commands.
    /// </summary>
    public virtual bool TakesTyping => false;

    /// <summary>Keeps what was typed here; false when it cannot be kept, and leaving the page would lose it.</summary>
    public virtual bool Park() => true;

    /// <summary>Stops what runs here; false when nothing does, so that the page can be left.</summary>
    public virtual bool Stop() => false;

    /// <summary>Another page is laid on this one; where the cursor stands is remembered here.</summary>
    public virtual void Rest()
    {
    }

    /// <summary>The page above was taken away; the cursor goes back to where it stood.</summary>
    public virtual void Resume()
    {
    }

    /// <summary>Raised when the user has typed something.</summary>
    public event Action? Touched;

    /// <summary>Raised when other keys can be pressed than before.</summary>
    public event Action? Turned;

    /// <summary>The row that a key applies to.</summary>
    public virtual int Row => -1;

    /// <summary>The key that copies what is shown.</summary>
    /// <param name="source">What can be copied.</param>
    protected static ScreenAction Copying(Func<CopySource> source) => new(
        Key.C.WithCtrl, "Ctrl+C", "Copy",
        "copies the row, the table or the page as text or CSV, to a file or the terminal's "
            + "clipboard", _ => new CopyStep(source()))
    {
        FindBy = "clipboard, csv, file, save", IsOnLine = false,
    };

    /// <summary>Reads again what it shows.</summary>
    public abstract void Refresh();

    protected override bool OnClearingViewport() => Ground.Clear(this);

    /// <summary>Says that other keys can be pressed than before.</summary>
    protected void OnTurned() => Turned?.Invoke();

    /// <summary>Says that the user has typed something.</summary>
    protected void OnTouched() => Touched?.Invoke();
}
