using Ledger.Terminal.Pictures;

namespace Ledger.Terminal.Blocks;

/// <summary>A part of a details pane: a heading and the lines under it, made for the width there is.</summary>
/// <param name="Heading">The heading; empty for none.</param>
/// <param name="Lines">The lines for a width.</param>
internal sealed record Block(string Heading, Func<int, IEnumerable<string>> Lines)
{
    /// <summary>How many columns at the beginning of each line are a label.</summary>
    public int Labels { get; init; }

    /// <summary>A block of sentences that are broken to the width.</summary>
    public static Block Of(string heading, params IEnumerable<string> sentences)
    {
        var texts = sentences.ToList();
        return new(heading, width => texts.SelectMany(text => Paragraph.Of(text, width, text.StartsWith(' ') ? 4 : 0)));
    }

    /// <summary>
    /// A block of facts, each with its label in a column of its own. A fact without a text is left out.
    /// </summary>
    public static Block Facts(string heading, params IEnumerable<(string Label, string? Text)> facts)
    {
        var known = facts.Where(fact => !string.IsNullOrEmpty(fact.Text)).ToList();
        var labels = known.Select(fact => fact.Label.Length).DefaultIfEmpty().Max() + 2;
        return new(heading,
            width => known.SelectMany(fact => Paragraph.Of(fact.Label, fact.Text!, width, labels))) { Labels = labels };
    }
}
