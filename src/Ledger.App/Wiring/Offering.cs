using System.CommandLine.Completions;

namespace Ledger.App.Wiring;

/// <summary>What the ledger offers for a value of the command line.</summary>
/// <param name="ledger">The ledger.</param>
/// <param name="holdings">What it holds today.</param>
/// <param name="line">The line as far as it is typed.</param>
internal delegate IEnumerable<string> Offer(ILedger ledger, Holdings holdings, ParseResult line);

/// <summary>What may stand behind the words of a value.</summary>
/// <param name="holdings">What the ledger holds today.</param>
/// <param name="begun">The words that are written.</param>
internal delegate IEnumerable<string> NextWords(Holdings holdings, string begun);

/// <summary>Completes values by the names in the ledger that the line means.</summary>
internal static class Offering
{
    /// <summary>An option completed by names in the ledger.</summary>
    public static Option<T> Offered<T>(this Option<T> option, Offer offer)
    {
        option.CompletionSources.Add(context => Names(context, offer));
        return option;
    }

    /// <summary>An argument completed by names in the ledger.</summary>
    public static Argument<T> Offered<T>(this Argument<T> argument, Offer offer)
    {
        argument.CompletionSources.Add(context => Names(context, offer));
        return argument;
    }

    /// <summary>
    /// An option completed word by word inside its value, as in a line between quotation marks. A single word that fits
    /// comes with each of those that may follow it: behind a single answer a shell would close the quotation.
    /// </summary>
    public static void OfferedWithin(this Option<string[]> option, NextWords next) =>
        option.CompletionSources.Add(context =>
        {
            var written = Written(context);
            var begun = written[..(written.LastIndexOf(' ') + 1)];
            return Glance(context, (_, holdings, _) =>
            {
                var fitting = Fitting(next(holdings, begun), written[begun.Length..]).ToList();
                return fitting is [var only] && next(holdings, begun + only).ToList() is { Count: > 1 } following
                    ? following.Select(word => $"{begun}{only} {word}")
                    : fitting.Select(word => begun + word);
            });
        });

    /// <summary>
    /// The value that the cursor stands in: from the quotation mark that is open there, or else from the last blank.
    /// </summary>
    private static string Written(CompletionContext context)
    {
        if (context is not TextCompletionContext { CommandLineText: var line, CursorPosition: var cursor })
            return context.WordToComplete;
        var (from, mark) = (0, ' ');
        for (var at = 0; at < Math.Min(cursor, line.Length); at++)
            if (line[at] == mark)
                (from, mark) = (at + 1, ' ');
            else if (mark == ' ' && line[at] is '"' or '\'')
                (from, mark) = (at + 1, line[at]);
        return line[from..Math.Min(cursor, line.Length)];
    }

    private static IEnumerable<CompletionItem> Names(CompletionContext context, Offer offer) =>
        Glance(context, (ledger, holdings, line) => Fitting(offer(ledger, holdings, line), context.WordToComplete));

    private static IEnumerable<CompletionItem> Glance(CompletionContext context, Offer offer) =>
        context.ParseResult.RootCommandResult.Command is ProgramRoot root
            ? root.Bench.Glance(context.ParseResult,
                (ledger, holdings) => offer(ledger, holdings, context.ParseResult).ToList())
                .Select(name => new CompletionItem(name))
            : [];

    private static IEnumerable<string> Fitting(IEnumerable<string> names, string begun) =>
        names.Where(name => name.StartsWith(begun, StringComparison.OrdinalIgnoreCase))
            .Distinct(StringComparer.OrdinalIgnoreCase);
}
