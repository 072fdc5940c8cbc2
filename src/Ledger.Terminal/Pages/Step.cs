using Ledger.Terminal.Blocks;

namespace Ledger.Terminal.Pages;

/// <summary>What a key leads to.</summary>
internal abstract record Step;

/// <summary>A form opens.</summary>
/// <param name="Form">The form.</param>
internal sealed record FormStep(Form Form) : Step
{
    /// <summary>What follows once it is saved; null for nothing.</summary>
    public Func<Step>? Then { get; init; }
}

/// <summary>One of the main screens comes up.</summary>
/// <param name="Screen">The screen's name.</param>
/// <param name="Id">The row to select; null for the one that was selected last.</param>
internal sealed record ScreenStep(string Screen, string? Id) : Step;

/// <summary>A table opens on top of this one; Esc leads back.</summary>
/// <param name="Table">The table.</param>
internal sealed record TableStep(TableModel Table) : Step;

/// <summary>What something came through opens, with what else came through that.</summary>
/// <param name="What">What is traced, by its name.</param>
internal sealed record TracedStep(string What) : Step;

/// <summary>Something to read opens on top; Esc leads back.</summary>
/// <param name="Title">What the title line says.</param>
/// <param name="Blocks">The text.</param>
internal sealed record ReadStep(string Title, IReadOnlyList<Block> Blocks) : Step;

/// <summary>An entry opens on top, to be amended or taken back.</summary>
/// <param name="Number">Its number.</param>
internal sealed record EntryStep(long Number) : Step;

/// <summary>It is asked what is to be copied of a page, and where to.</summary>
/// <param name="Source">What can be copied.</param>
internal sealed record CopyStep(CopySource Source) : Step;

/// <summary>A text goes into the terminal's clipboard.</summary>
/// <param name="Text">The text.</param>
internal sealed record ClipboardStep(string Text) : Step;

/// <summary>A text goes into a file.</summary>
/// <param name="Text">The text.</param>
/// <param name="File">The file.</param>
internal sealed record FileStep(string Text, string File) : Step;

/// <summary>The table has changed and is drawn again.</summary>
internal sealed record RedrawStep : Step;

/// <summary>A page is put on paper; the message line says where it lies.</summary>
/// <param name="Write">Writes the page.</param>
internal sealed record PaperStep(Func<IPaper, string> Write) : Step;

/// <summary>Labels are put on paper, once it was said which paper that is.</summary>
/// <param name="What">What they are for.</param>
/// <param name="Write">Writes them.</param>
internal sealed record LabelStep(string What, Func<IPaper, LabelPlace, string> Write) : Step;

/// <summary>A sentence for the message line.</summary>
/// <param name="Sentence">The sentence.</param>
internal sealed record MessageStep(string Sentence) : Step;

/// <summary>Work on the file begins, and is watched until it ends.</summary>
/// <param name="Work">The work.</param>
internal sealed record WorkStep(Work Work) : Step;
