package takeup.shell;

/** The completion for zsh, with what each command and option does. */
public record ZshCompletion(SubcommandTree tree) {
    public String script() {
        StringBuilder lists = new StringBuilder();
        for (SubcommandTree command : tree.all()) {
            lists.append("        ").append(ShellTables.pattern(command.path())).append(")\n            options=(\n");
            for (SubcommandTree.Flag flag : command.flags()) {
                flag.names().forEach(it -> described(lists, it, flag.about()));
            }
            lists.append("            )\n            below=(\n");
            for (SubcommandTree below : command.below()) {
                described(lists, below.name(), below.about().get(0));
            }
            lists.append("            )\n            ;;\n");
        }
        return new ShellTables(tree).fill("""
                #compdef takeup
                # Completion of takeup %VERSION% for zsh, printed by: takeup completion zsh
                %FUNCTIONS%
                _takeup() {
                    local word cur=${words[CURRENT]} command='' place=0 value='' data='' kind='' i
                    local -a options below found
                    for ((i = 2; i < CURRENT; i++)); do
                        word=${words[i]}
                        if [[ -n $value ]]; then
                            [[ $value == --data ]] && data=$word
                            value=
                            continue
                        fi
                        [[ $word == --data=* ]] && data=${word#--data=}
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
                    if [[ -z $value && $cur == --*=* ]]; then
                        value=${cur%%=*}
                        compset -P '*='
                    fi
                    if [[ -n $value ]]; then
                        _takeup_after "$command" "$value"
                    elif [[ $cur == -* ]]; then
                        _describe -o option options
                        return
                    else
                        _takeup_in_place "$command" "$place"
                        if ((place == 0 && ${#below} > 0)); then
                            _describe command below
                        fi
                    fi
                    case $kind in
                        '' | any) ;;
                        '='*)
                            found=(${=kind#=})
                            compadd -a found
                            ;;
                        folders) _files -/ ;;
                        files) _files ;;
                        *)
                            found=(${(f)"$(${~words[1]} completion --words $kind ${data:+--data} \
                ${data:+${~data}} 2>/dev/null)"})
                            compadd -a found
                            ;;
                    esac
                }

                if [[ ${funcstack[1]} == _takeup ]]; then
                    _takeup "$@"
                else
                    compdef _takeup takeup
                fi
                """, lists);
    }

    private static void described(StringBuilder into, String word, String about) {
        into.append("                ")
                .append(ShellTables.quoted(word + ":" + about))
                .append('\n');
    }
}
