/** What the options and arguments that commands share are for. */

export const descriptionYamlOrJson = 'The description, YAML or JSON; - for standard input';
export const printResultsAndTroubles = 'Print results, and troubles, as JSON on standard output';
export const leaveOutProgress = 'Leave out progress and hints';
export const putValueInDomes = 'Put a value in: domes.hall.radius=2.5; may be given many times';
export const writeCsvWithDecimal = 'Write CSV with decimal commas and semicolons between cells';
export const didYouMean = (near: string): string => `Did you mean ${near}?`;
export const thereIsNoCommand = (typed: string): string => `There is no command ${typed}.`;
export const thereAreThese = (known: string): string => `There are: ${known}.`;
export const helpTellsHow = (command: string): string => `"ringcourse${command} --help" tells how it is called.`;
export const thereIsNoOption = (typed: string): string => `There is no option ${typed} here.`;
export const oneNameTooMany = (name: string): string => `${name} is one name too many.`;
export const optionIsMissing = (option: string): string => `Option ${option} is missing.`;
export const fileNameIsMissing = 'The name of a file is missing.';
export const nameIsMissing = (usage: string | undefined): string => `A name is missing: ringcourse ${usage}.`;
export const optionNeedsValue = (option: string): string => `Option ${option} needs a value.`;
