using System.Text;

namespace Ledger.Core.Tests.Architecture;

/// <summary>
/// The string literals of a C# source text: what the program may say. A hole of an interpolated one stands as "{}", its
/// own literals follow.
/// </summary>
internal sealed class Literals
{
    private readonly string _source;
    private readonly List<(int Line, string Text)> _found = [];
    private int _at;

    private Literals(string source) => _source = source;

    /// <summary>Every literal with the number of the line on which it begins.</summary>
    public static IReadOnlyList<(int Line, string Text)> In(string source)
    {
        var literals = new Literals(source);
        while (literals._at < source.Length)
            literals.Step();
        return literals._found;
    }

    private void Step()
    {
        if (Is("//"))
            SkipTo("\n");
        else if (Is("/*"))
            SkipTo("*/");
        else if (_source[_at] == '\'')
            SkipCharacter();
        else if (Prefix() is { } dollars)
            Literal(dollars);
        else
            _at++;
    }

    private bool Is(string mark) => string.CompareOrdinal(_source, _at, mark, 0, mark.Length) == 0;

    private void SkipTo(string mark)
    {
        var end = _source.IndexOf(mark, _at, StringComparison.Ordinal);
        _at = end < 0 ? _source.Length : end + mark.Length;
    }

    private void SkipCharacter()
    {
        _at++;
        while (_source[_at] != '\'')
            _at += _source[_at] == '\\' ? 2 : 1;
        _at++;
    }

    /// <summary>The signs before the quote with which a literal begins here; null when none does.</summary>
    private string? Prefix()
    {
        var end = _at;
        while (end < _source.Length && _source[end] is '$' or '@')
            end++;
        return end < _source.Length && _source[end] == '"' ? _source[_at..end] : null;
    }

    private void Literal(string prefix)
    {
        var line = _source.AsSpan(0, _at).Count('\n') + 1;
        var slot = _found.Count;
        _found.Add(default);
        _at += prefix.Length;
        var quotes = Run('"');
        var text = new StringBuilder();
        if (quotes >= 3)
            Raw(new string('"', quotes), prefix.Count(c => c == '$'), text);
        else if (quotes == 2)
            _at += 2;
        else
            Plain(prefix, text);
        _found[slot] = (line, text.ToString());
    }

    private int Run(char sign)
    {
        var end = _at;
        while (end < _source.Length && _source[end] == sign)
            end++;
        return end - _at;
    }

    private void Raw(string quotes, int holes, StringBuilder text)
    {
        _at += quotes.Length;
        while (!Is(quotes))
            if (holes > 0 && Run('{') >= holes)
                Hole(Run('{'), text);
            else
                text.Append(_source[_at++]);
        _at += quotes.Length;
    }

    private void Plain(string prefix, StringBuilder text)
    {
        var (isVerbatim, isOpen) = (prefix.Contains('@', StringComparison.Ordinal),
            prefix.Contains('$', StringComparison.Ordinal));
        for (_at++; ;)
            switch (_source[_at])
            {
                case '"' when isVerbatim && Is("\"\""):
                case '{' when isOpen && Is("{{"):
                case '\\' when !isVerbatim:
                    text.Append(_source[_at + 1]);
                    _at += 2;
                    break;
                case '"':
                    _at++;
                    return;
                case '{' when isOpen:
                    Hole(1, text);
                    break;
                default:
                    text.Append(_source[_at++]);
                    break;
            }
    }

    /// <summary>Passes a hole with all that is nested in it.</summary>
    private void Hole(int braces, StringBuilder text)
    {
        text.Append("{}");
        _at += braces;
        for (var depth = 0; _source[_at] != '}' || depth > 0;)
        {
            depth += _source[_at] switch { '{' => 1, '}' => -1, _ => 0 };
            Step();
        }

        _at += braces;
    }
}
