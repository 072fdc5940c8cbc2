using System.CommandLine.Parsing;

namespace Ledger.App.Values;

/// <summary>
/// Options and arguments read by a function that refuses with a sentence, a <see cref="FormatException"/>. What
/// completes them is what they are given: the library would offer the names of an enumeration, which are no words of
/// the program.
/// </summary>
internal static class Typed
{
    public static Option<T> Option<T>(string name, string value, Func<string, T> read, string description)
    {
        var option = new Option<T>(name)
        {
            HelpName = value,
            Description = description,
            CustomParser = result => Read(result, name, read),
        };
        option.CompletionSources.Clear();
        return option;
    }

    /// <summary>
    /// An option that takes one of several words, in any case; completion offers these and no others.
    /// </summary>
    /// <param name="name">The option's name.</param>
    /// <param name="value">What stands for its value in help.</param>
    /// <param name="words">The words, in the order of the enumeration.</param>
    /// <param name="what">What one of them is, for the refusal.</param>
    /// <param name="description">What the option does.</param>
    public static Option<T?> Choice<T>(string name, string value, IReadOnlyList<string> words,
        string what, string description) where T : struct, Enum
    {
        var option = Option(name, value, Text.OneOf<T>(words, what), description);
        option.CompletionSources.Add([.. words]);
        return option;
    }

    public static Option<T[]> Options<T>(string name, string value, Func<string, T> read,
        string description) => new(name)
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

    /// <summary>
    /// An argument that takes one of several words, in any case; completion offers these and no others.
    /// </summary>
    public static Argument<string> Choice(string name, IReadOnlyList<string> words, string description)
    {
        var argument = Argument(name, Text.OneOf(words, name), description);
        argument.CompletionSources.Add([.. words]);
        return argument;
    }

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
