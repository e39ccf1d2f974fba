import type { Command } from '../command.js';
import { EXIT, UsageError } from '../exit.js';
import { type Completed, completionScript, SHELLS } from '../shells/completion.js';
import { didYouMean } from '../suggest.js';
import * as texts from '../texts/first-steps.js';

/** @param commands asked for when the command runs, since it is one of them */
export const completion = (commands: () => readonly Completed[]): Command<{ shell: string }> => ({
  usage: 'completion <shell>',
  describe: texts.printScriptThatTeaches,
  examples: [
    ['completion bash > ringcourse.bash', texts.thenSourceRingcourseBash],
    ['completion zsh > _ringcourse', texts.inFolderOfYour],
    ['completion fish > ringcourse.fish', 'in ~/.config/fish/completions'],
  ],
  names: { shell: { type: 'string', demandOption: true, describe: texts.whichShell(SHELLS.join(', ')) } },
  options: {},
  run: async ({ shell }, terminal) => {
    const known = SHELLS.find((one) => one === shell);
    if (known === undefined)
      throw new UsageError(
        texts.thereIsNoCompletion(JSON.stringify(shell)),
        didYouMean(shell, SHELLS, texts.thereIsOne(SHELLS.join(', '))),
      );
    terminal.raw(completionScript(known, commands()));
    return EXIT.fine;
  },
});
