using System.CommandLine.Completions;

namespace Ledger.App.Wiring;

/// <summary>What the ledger offers for a value of the command line.</summary>
/// <param name="ledger">The ledger.</param>
/// <param name="holdings">What it holds today.</param>
/// <param name="line">The line as far as it is typed.</param>
internal delegate IEnumerable<string> Offer(ILedger ledger, Holdings holdings, ParseResult line);

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

    private static IEnumerable<CompletionItem> Names(CompletionContext context, Offer offer) =>
        context.ParseResult.RootCommandResult.Command is ProgramRoot root
            ? root.Bench.Glance(context.ParseResult,
                (ledger, holdings) => offer(ledger, holdings, context.ParseResult).ToList())
                .Where(name => name.StartsWith(context.WordToComplete, StringComparison.OrdinalIgnoreCase))
                .Distinct(StringComparer.OrdinalIgnoreCase).Select(name => new CompletionItem(name))
            : [];
}
