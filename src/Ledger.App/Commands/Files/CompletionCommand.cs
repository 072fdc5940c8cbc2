namespace Ledger.App.Commands.Files;

/// <summary>completion: a script with which a shell completes the commands.</summary>
internal sealed class CompletionCommand : ExplainedCommand
{
    private static readonly IReadOnlyList<string> _shells = ["bash", "zsh", "fish"];

    private readonly Argument<string> _shell = Typed.Choice("shell", _shells, string.Join(", ", _shells));

    public CompletionCommand(Workbench bench)
        : base("completion", "Writes a script with which a shell completes commands and options.", """
            Example: trayledger completion bash
                       > ~/.local/share/bash-completion/completions/trayledger
            """)
    {
        Arguments.Add(_shell);
        SetAction(parse =>
        {
            bench.Around.Out.Write(Script(parse.GetRequiredValue(_shell)).ReplaceLineEndings("\n"));
            return ExitStatus.Done;
        });
    }

    /// <summary>
    /// The program itself answers what could follow: the suggest directive takes the cursor's position and the line.
    /// </summary>
    private static string Script(string shell) => shell switch
    {
        "bash" => """
            _trayledger() {
                local found word=${COMP_WORDS[COMP_CWORD]} quoted=
                if [[ $word == [\"\']* ]]; then quoted=yes word=${word:1}; fi
                COMPREPLY=()
                while IFS= read -r found; do
                    if [[ -n $found && ${found,,} == "${word,,}"* ]]; then
                        if [[ $quoted ]]; then COMPREPLY+=("$found"); else COMPREPLY+=("$(printf %q "$found")"); fi
                    fi
                done <<< "$(trayledger "[suggest:${COMP_POINT}]" "${COMP_LINE}" 2>/dev/null)"
            }
            complete -o default -F _trayledger trayledger

            """,
        "zsh" => """
            #compdef trayledger
            _trayledger() {
                local -a found
                local line="${(j: :)words[1,CURRENT-1]} ${QIPREFIX}${IPREFIX}${PREFIX}"
                found=("${(@f)$(trayledger "[suggest:${#line}]" "${line}" 2>/dev/null)}")
                compadd -M 'm:{a-zA-Z}={A-Za-z}' -a found
                _files
            }
            if [[ $funcstack[1] == _trayledger ]]; then _trayledger "$@"; else compdef _trayledger trayledger; fi

            """,
        _ => """
            function __trayledger
                set -l line (commandline -cp)
                trayledger "[suggest:"(string length -- "$line")"]" "$line" 2>/dev/null
            end
            complete -c trayledger -a '(__trayledger)'

            """,
    };
}
