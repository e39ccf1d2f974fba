/** A stream as far as the command line uses it. */
export interface Stream {
  write(content: string | Uint8Array): unknown;
  readonly isTTY?: boolean;
}

const STYLES = { good: '32', warn: '33', bad: '31', strong: '1', faint: '2' } as const;
export type Style = keyof typeof STYLES;

/** A piece of a line: plain, or in a style that shows on a terminal alone. */
export type Piece = string | readonly [style: Style, text: string];

/** Results go to `out`, progress and trouble to `err`; each call is one line. */
export interface Terminal {
  out(...pieces: readonly Piece[]): void;
  err(...pieces: readonly Piece[]): void;
  /** Progress and hints: as `err`, and nothing where quiet is asked for. */
  note(...pieces: readonly Piece[]): void;
  /** A part of a line of progress, on a terminal alone; the line's end follows. */
  part(text: string): void;
  /** Text for programs (a schema, CSV), passed on as it is. */
  raw(content: string | Uint8Array): void;
  /** Whether progress is read by a person at a terminal. */
  readonly live: boolean;
  /** Asks a question of a person at a terminal, `null` where there is none; answered with `null` where the input ends. */
  readonly ask: ((question: string) => Promise<string | null>) | null;
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
const CONTROL = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g;

/** Texts of a description reach the terminal, so what would steer it is shown and not obeyed. */
const tame = (text: string): string =>
  text.replace(CONTROL, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`);

/** Colour only on a terminal, and never where `NO_COLOR` is set (no-color.org) or the terminal is dumb. */
function hasColour(stream: Stream, env: NodeJS.ProcessEnv): boolean {
  return stream.isTTY === true && (env.NO_COLOR ?? '') === '' && env.TERM !== 'dumb';
}

export function terminalOn(out: Stream, err: Stream, env: NodeJS.ProcessEnv, ask: Terminal['ask'] = null): Terminal {
  const printer = (stream: Stream) => {
    const colour = hasColour(stream, env);
    const show = (piece: Piece): string => {
      if (typeof piece === 'string') return tame(piece);
      const [style, text] = piece;
      return colour ? `\u001b[${STYLES[style]}m${tame(text)}\u001b[0m` : tame(text);
    };
    return (...pieces: readonly Piece[]) => {
      stream.write(`${pieces.map(show).join('')}\n`);
    };
  };
  const live = err.isTTY === true && env.TERM !== 'dumb';
  return {
    out: printer(out),
    err: printer(err),
    note: printer(err),
    part: (text) => {
      if (live) err.write(tame(text));
    },
    raw: (content) => {
      out.write(content);
    },
    live,
    ask,
  };
}

/** The same terminal without progress, hints and questions. */
export const quietly = (terminal: Terminal): Terminal => ({
  ...terminal,
  note: () => undefined,
  part: () => undefined,
  ask: null,
});

/** The same terminal with its results where progress goes: standard output holds a file. */
export const besideOutput = (terminal: Terminal): Terminal => ({ ...terminal, out: terminal.note });
