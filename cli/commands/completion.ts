import type { Command } from '../command.js';
import { EXIT, UsageError } from '../exit.js';
import { type Completed, completionScript, SHELLS } from '../shells/completion.js';
import { didYouMean } from '../suggest.js';

/** @param commands asked for when the command runs, since it is one of them */
export const completion = (commands: () => readonly Completed[]): Command<{ shell: string }> => ({
  usage: 'completion <shell>',
  describe: 'Print a script that teaches your shell to complete commands, options and names of tables.',
  examples: [
    ['completion bash > ringcourse.bash', 'then: source ringcourse.bash in ~/.bashrc'],
    ['completion zsh > _ringcourse', 'in a folder of your $fpath'],
    ['completion fish > ringcourse.fish', 'in ~/.config/fish/completions'],
  ],
  names: { shell: { type: 'string', demandOption: true, describe: `Which: ${SHELLS.join(', ')}` } },
  options: {},
  run: async ({ shell }, terminal) => {
    const known = SHELLS.find((one) => one === shell);
    if (known === undefined)
      throw new UsageError(
        `There is no completion for ${JSON.stringify(shell)}.`,
        didYouMean(shell, SHELLS, `There is one for ${SHELLS.join(', ')}.`),
      );
    terminal.raw(completionScript(known, commands()));
    return EXIT.fine;
  },
});
