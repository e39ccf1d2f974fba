import type { Command } from '../command.js';
import { EXIT, UsageError } from '../exit.js';
import { completionScript, SHELLS } from '../shells/completion.js';
import { didYouMean } from '../suggest.js';
import * as texts from '../texts/first-steps.js';

export const completion: Command<{ shell: string }> = {
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
    // The list of commands names this one too.
    const { entryOf, LISTED } = await import('../commands.js');
    const commands = await Promise.all(LISTED.map(async (listed) => (await entryOf(listed)).completed));
    terminal.raw(completionScript(known, commands));
    return EXIT.fine;
  },
};
