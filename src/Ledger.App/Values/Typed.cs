using System.CommandLine;
using System.CommandLine.Parsing;

namespace Ledger.App.Values;

/// <summary>Options and arguments read by a function that refuses with a sentence, a <see cref="FormatException"/>.</summary>
internal static class Typed
{
    public static Option<T> Option<T>(string name, string value, Func<string, T> read, string description) => new(name)
    {
        HelpName = value,
        Description = description,
        CustomParser = result => Read(result, name, read),
    };

    public static Option<T[]> Options<T>(string name, string value, Func<string, T> read, string description) => new(name)
    {
        HelpName = value,
        Description = description,
        AllowMultipleArgumentsPerToken = true,
        CustomParser = result => [.. result.Tokens.Select(token => Read(result, name, token.Value, read))],
    };

    public static Argument<T> Argument<T>(string name, Func<string, T> read, string description) => new(name)
    {
        HelpName = name.ToUpperInvariant(),
        Description = description,

        // The library takes a value that may be null for one that may be left out.
        Arity = ArgumentArity.ExactlyOne,
        CustomParser = result => Read(result, name, read),
    };

    public static T Read<T>(ArgumentResult result, string name, Func<string, T> read) =>
        result.Tokens.Count == 0 ? default! : Read(result, name, result.Tokens[^1].Value, read);

    private static T Read<T>(ArgumentResult result, string name, string text, Func<string, T> read)
    {
        try
        {
            return read(text);
        }
        catch (FormatException wrong)
        {
            result.AddError($"{name}: {wrong.Message}");
            return default!;
        }
    }
}
