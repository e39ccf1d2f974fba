/** Wording of the commands that help to begin. */

export const writeCommentedDescription =
  'Write a commented description to start from; asks a few questions at a terminal.';
export const asksForRadiusProfile = 'asks for radius, profile and openings';
export const asksForRest = 'asks for the rest';
export const onStandardOutputWithout = 'on standard output, without questions';
export const whereToWrite = 'Where to write it, a name in .yaml; - for standard output';
export const writeOverFile = 'Write over a file that exists';
export const printDescriptionAndWrite = 'Print the description and write nothing';
export const descriptionIsYaml = (file: string): string =>
  `The description to start from is YAML, and ${file} is not named so.`;
export const giveNameThatEnds = 'Give a name that ends in .yaml.';
export const existsAlreadyAndWas = (file: string): string => `${file} exists already and was left as it is.`;
export const chooseAnotherName = 'Choose another name, or give --force.';
export const cannotBeWritten = (file: string): string => `${file} can't be written`;
export const wrote = (file: string): string => `Wrote ${file}`;
export const nextCheck = (file: string): string => `Next: ringcourse check ${file}`;
export const optionIs = (key: string, said: string): string => `--${key} is ${said}.`;
export const printJsonSchema = 'Print the JSON Schema of a description, with which editors complete it.';
export const onceBesideDescriptions = 'once, beside the descriptions';
export const printScriptThatTeaches =
  'Print a script that teaches your shell to complete commands, options and names of tables.';
export const thenSourceRingcourseBash = 'then: source ringcourse.bash in ~/.bashrc';
export const inFolderOfYour = 'in a folder of your $fpath';
export const whichShell = (shells: string): string => `Which: ${shells}`;
export const thereIsNoCompletion = (shell: string): string => `There is no completion for ${shell}.`;
export const thereIsOne = (shells: string): string => `There is one for ${shells}.`;
export const inputEnded = 'The input ended before all questions were answered; nothing was written.';
export const answerAll =
  'Press return to take what stands in brackets, or answer in the call, as "ringcourse new --help" tells.';
