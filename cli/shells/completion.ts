/** What a shell needs to know of one command to complete it. */
export interface Completed {
  readonly name: string;
  readonly describe: string;
  /** Names of its options, dashes included, and whether a value follows. */
  readonly options: readonly { readonly name: string; readonly describe: string; readonly takesValue: boolean }[];
  /** Words that may stand in the place of each of its names; `null` where a file does. */
  readonly names: readonly (readonly string[] | null)[];
}

export const SHELLS = ['bash', 'zsh', 'fish'] as const;
export type Shell = (typeof SHELLS)[number];

/** A script that teaches a shell the commands, their options and words; it runs nothing of ours while completing. */
export function completionScript(shell: Shell, commands: readonly Completed[]): string {
  if (shell === 'fish') return fishScript(commands);
  return shell === 'bash' ? bashScript(commands) : zshScript(commands);
}

const quoted = (text: string): string => `'${text.replaceAll("'", `'\\''`)}'`;
const join = (words: readonly string[]): string => words.join(' ');

/** Lines of a `case` of the shell that bash and zsh share. */
function cases(commands: readonly Completed[]): string {
  return commands
    .map(({ name, options, names }) => {
      const words = names.map((own, i) => `words_${i}=${quoted(own === null ? 'FILE' : join(own))}`);
      const valued = options.filter(({ takesValue }) => takesValue).map((o) => o.name);
      return `    ${name}) options=${quoted(join(options.map((o) => o.name)))}; valued=${quoted(join(valued))}; ${words.join('; ') || ':'} ;;`;
    })
    .join('\n');
}

const bashScript = (commands: readonly Completed[]): string => `# ringcourse, completion for bash
_ringcourse() {
  local word=\${COMP_WORDS[COMP_CWORD]} last=\${COMP_WORDS[COMP_CWORD-1]} command=\${COMP_WORDS[1]}
  local options= valued= words_0= words_1= place=0 i
  if [ "$COMP_CWORD" -eq 1 ]; then
    COMPREPLY=($(compgen -W ${quoted(join(commands.map(({ name }) => name)))} -- "$word"))
    return
  fi
  case $command in
${cases(commands)}
  esac
  for ((i = 2; i < COMP_CWORD; i++)); do
    case " $valued " in *" \${COMP_WORDS[i]} "*) ((i++)); continue ;; esac
    case \${COMP_WORDS[i]} in -?*) ;; *) ((place++)) ;; esac
  done
  case " $valued " in *" $last "*) COMPREPLY=($(compgen -f -- "$word")); return ;; esac
  case $word in -*) COMPREPLY=($(compgen -W "$options" -- "$word")); return ;; esac
  local known=words_$place
  known=\${!known-}
  case $known in
    FILE) COMPREPLY=($(compgen -f -- "$word")) ;;
    *) COMPREPLY=($(compgen -W "$known" -- "$word")) ;;
  esac
}
complete -o filenames -F _ringcourse ringcourse
`;

const zshScript = (commands: readonly Completed[]): string => `#compdef ringcourse
# ringcourse, completion for zsh
_ringcourse() {
  local options= valued= words_0= words_1= place=0 i
  local command=\${words[2]} word=\${words[CURRENT]} last=\${words[CURRENT-1]}
  if (( CURRENT == 2 )); then
    local -a commands=(
${commands.map(({ name, describe }) => `      ${quoted(`${name}:${describe.replaceAll(':', '\\:')}`)}`).join('\n')}
    )
    _describe 'command' commands
    return
  fi
  case $command in
${cases(commands)}
  esac
  for (( i = 3; i < CURRENT; i++ )); do
    if [[ " $valued " == *" \${words[i]} "* ]]; then (( i++ )); continue; fi
    [[ \${words[i]} == -?* ]] || (( place++ ))
  done
  if [[ " $valued " == *" $last "* ]]; then _files; return; fi
  if [[ $word == -* ]]; then compadd -- \${=options}; return; fi
  local known=words_$place
  known=\${(P)known-}
  if [[ $known == FILE ]]; then _files; else compadd -- \${=known}; fi
}
if [[ $funcstack[1] == _ringcourse ]]; then _ringcourse "$@"; else compdef _ringcourse ringcourse; fi
`;

function fishScript(commands: readonly Completed[]): string {
  const lines = commands.flatMap(({ name, describe, options, names }) => {
    const inside = `complete -c ringcourse -n ${quoted(`__fish_seen_subcommand_from ${name}`)}`;
    const words = names.filter((own): own is readonly string[] => own !== null).flat();
    return [
      `complete -c ringcourse -n __fish_use_subcommand -f -a ${name} -d ${quoted(describe)}`,
      ...options.map((o) => {
        const flag = o.name.startsWith('--') ? `-l ${o.name.slice(2)}` : `-s ${o.name.slice(1)}`;
        return `${inside} ${flag}${o.takesValue ? ' -r' : ''} -d ${quoted(o.describe)}`;
      }),
      ...(words.length > 0 ? [`${inside} -a ${quoted(join(words))}`] : []),
      `${inside} ${names.includes(null) ? '-F' : '-f'}`,
    ];
  });
  return `# ringcourse, completion for fish\n${lines.join('\n')}\n`;
}
