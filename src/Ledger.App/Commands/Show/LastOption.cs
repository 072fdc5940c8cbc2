namespace Ledger.App.Commands.Show;

/// <summary>--last: how many of a long list are shown.</summary>
internal sealed class LastOption : Option<int?>
{
    private readonly int _otherwise;

    public LastOption(string what, int otherwise)
        : base("--last")
    {
        _otherwise = otherwise;
        HelpName = "N";
        Description = $"how many {what} at most; otherwise {otherwise}";
        CustomParser = result => Typed.Read<int?>(result, "--last", Count);
    }

    public int In(ParseResult parse) => parse.GetValue(this) ?? _otherwise;

    private static int? Count(string text) => Text.Whole(text) is > 0 and var count
        ? count
        : throw new FormatException($"\"{text}\" is not how many; write a number from 1 on");
}
