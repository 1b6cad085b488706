package takeup.shell;

/** The completion for bash, 3.2 or newer: tables made from the commands, and a function that reads them. */
public record BashCompletion(SubcommandTree tree) {
    public String script() {
        StringBuilder lists = new StringBuilder();
        for (SubcommandTree command : tree.all()) {
            lists.append("        ")
                    .append(ShellTables.pattern(command.path()))
                    .append(") options=")
                    .append(ShellTables.quoted(ShellTables.names(command)))
                    .append(" below=")
                    .append(ShellTables.quoted(ShellTables.below(command)))
                    .append(" ;;\n");
        }
        return new ShellTables(tree).fill("""
                # Completion of takeup %VERSION% for bash, printed by: takeup completion bash
                %FUNCTIONS%
                _takeup() {
                    local words=() word cur prev command='' place=0 value='' data='' kind='' options='' \
                below='' i last IFS=$' \\t\\n'
                    COMPREPLY=()
                    # What is typed as --data=DIR comes in three pieces; without the sign it reads like --data DIR.
                    for ((i = 0; i <= COMP_CWORD; i++)); do
                        [[ ${COMP_WORDS[i]} == = ]] || words+=("${COMP_WORDS[i]}")
                    done
                    [[ ${COMP_WORDS[COMP_CWORD]} == = ]] && words+=('')
                    last=$((${#words[@]} - 1))
                    cur=${words[last]}
                    prev=
                    for ((i = 1; i < last; i++)); do
                        word=${words[i]}
                        if [[ -n $value ]]; then
                            [[ $value == --data ]] && data=$word
                            value=
                            continue
                        fi
                        _takeup_after "$command" "$word"
                        if [[ -n $kind ]]; then
                            value=$word
                        elif [[ $word != -* ]]; then
                            case "${command:+$command }$word" in
                                %PATHS%) command=${command:+$command }$word ;;
                                *) place=$((place + 1)) ;;
                            esac
                        fi
                    done
                    case "$command" in
                %LISTS%    esac
                    kind=
                    if [[ -n $value ]]; then
                        _takeup_after "$command" "$value"
                        below=
                    elif [[ $cur == -* ]]; then
                        kind="=$options"
                        below=
                    else
                        _takeup_in_place "$command" "$place"
                        [[ $place == 0 ]] || below=
                        [[ -n $below && -z $kind ]] && kind="=$below"
                    fi
                    case $kind in
                        '' | any) ;;
                        '='*) COMPREPLY=($(compgen -W "${kind#=}" -- "$cur")) ;;
                        folders | files)
                            local IFS=$'\\n'
                            type compopt >/dev/null 2>&1 && compopt -o filenames 2>/dev/null
                            if [[ $kind == folders ]]; then
                                COMPREPLY=($(compgen -d -- "$cur"))
                            else
                                COMPREPLY=($(compgen -f -- "$cur"))
                            fi
                            ;;
                        *) COMPREPLY=($(compgen -W "$("${words[0]/#\\~/$HOME}" completion --words "$kind" \
                ${data:+--data "${data/#\\~/$HOME}"} 2>/dev/null) $below" -- "$cur")) ;;
                    esac
                }
                complete -F _takeup takeup
                """, lists);
    }
}
