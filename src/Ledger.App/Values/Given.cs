using System.CommandLine;

namespace Ledger.App.Values;

/// <summary>Tells an option that was not given, which leaves a setting alone, from one that was given "none".</summary>
internal static class Given
{
    public static T? Or<T>(this Option<T> option, T? otherwise, ParseResult parse) =>
        parse.GetResult(option) is null ? otherwise : parse.GetValue(option);
}
