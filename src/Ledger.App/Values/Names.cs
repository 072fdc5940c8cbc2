using System.CommandLine;

namespace Ledger.App.Values;

/// <summary>An argument of several names, divided by blanks or commas.</summary>
internal sealed class Names : Argument<string[]>
{
    public Names(string name, string description)
        : base(name)
    {
        HelpName = name.ToUpperInvariant();
        Description = description;
        Arity = ArgumentArity.OneOrMore;
    }

    public IReadOnlyList<string> In(ParseResult parse) =>
    [
        .. parse.GetRequiredValue(this)
            .SelectMany(name => name.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)),
    ];
}
