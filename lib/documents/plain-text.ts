/** Controls (C0, DEL, C1), line and paragraph separators, and code points that no text may hold (XML 1.0, 2.2). */
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what this finds
const UNPRINTABLE = /[\u0000-\u001f\u007f-\u009f\u2028\u2029\ufffe\uffff]|\p{Surrogate}/gu;

/** The text on one line: whatever could end a line, steer a reader or break an encoding becomes a space. */
export const oneLine = (text: string): string => text.replace(UNPRINTABLE, ' ');
