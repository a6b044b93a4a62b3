import { chanceFrom } from '../oracle/chance.ts';
import type { Chance } from '../oracle/chance.ts';

/** A kind of input: how one is drawn, what must hold of it, and how a smaller one is made of it. */
export interface KindOf<I> {
  readonly name: string;
  /** How many of these are tried for one of the texts. */
  readonly share: number;
  readonly draw: (chance: Chance, seed: number) => I;
  /** What is wrong, in words. */
  readonly check: (input: I, chance: Chance) => readonly string[] | Promise<readonly string[]>;
  /** Inputs with less in them, the smallest first. */
  readonly smaller: (input: I) => Iterable<I>;
  /** As it is shown to whoever looks into a failure. */
  readonly print: (input: I) => string;
  /** In characters. */
  readonly size: (input: I) => number;
  /** As many inputs as there are, where they are listed and not drawn. */
  readonly count?: number;
  /** So many times the processor time that parsing a good text of its size takes, an input may take. */
  readonly patience: number;
}

export interface Tried {
  readonly wrong: readonly string[];
  readonly size: number;
}

/** A kind with its inputs hidden. */
export interface Kind extends Pick<KindOf<never>, 'name' | 'share' | 'patience'> {
  readonly count: number | null;
  readonly attempt: (seed: number) => Promise<Tried>;
  /** The input of a seed as it is. */
  readonly printed: (seed: number) => string;
  readonly sizeOf: (seed: number) => number;
  /** The smallest input found that fails as the one of the seed does, as it is shown. */
  readonly smallest: (seed: number) => Promise<string>;
}

/** So many smaller inputs are tried for one failure. */
const mostTrials = 400;

export function kindOf<I>({
  name,
  share,
  patience,
  draw,
  check,
  smaller,
  print,
  size,
  count,
}: KindOf<I>): Kind {
  const drawn = (seed: number): I => draw(chanceFrom(seed), seed);
  const wrongWith = async (input: I, seed: number): Promise<readonly string[]> => {
    const found = await checked(() => check(input, chanceFrom(seed + 0x5bd1e995)));
    await new Promise((resolve) => setImmediate(resolve));
    return [...found, ...stray.splice(0)];
  };
  const smallest = async (seed: number): Promise<string> => {
    let input = drawn(seed);
    const looks = new Set((await wrongWith(input, seed)).map(lookOf));
    let left = mostTrials;
    for (let found = true; found && left > 0;) {
      found = false;
      for (const less of smaller(input)) {
        left -= 1;
        if (left < 0) break;
        if (!(await wrongWith(less, seed)).some((one) => looks.has(lookOf(one)))) continue;
        input = less;
        found = true;
        break;
      }
    }
    return print(input);
  };
  return {
    name,
    share,
    patience,
    count: count ?? null,
    attempt: async (seed) => {
      const input = drawn(seed);
      return { wrong: await wrongWith(input, seed), size: size(input) };
    },
    printed: (seed) => print(drawn(seed)),
    sizeOf: (seed) => size(drawn(seed)),
    smallest,
  };
}

async function checked(check: () => ReturnType<KindOf<never>['check']>): Promise<readonly string[]> {
  try {
    return await (check() as Promise<readonly string[]>);
  } catch (error) {
    return [`throws ${thrown(error)}`];
  }
}

/** What is thrown where nobody waits for it: it belongs to the input that is being tried. */
const stray: string[] = [];

export function catchStray(): void {
  const keep = (error: unknown): void => {
    stray.push(`throws where nobody catches it: ${thrown(error)}`);
  };
  process.on('unhandledRejection', keep);
  process.on('uncaughtException', keep);
}

/** What a failure is, whatever it is about. */
export function lookOf(wrong: string): string {
  return wrong.replace(/`[^`]*`|"[^"]*"|\d+/g, '').slice(0, 50);
}

function thrown(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const [, ...frames] = (error.stack ?? '').split('\n').filter((line) => /^\s+at |^\w*Error/.test(line));
  const where = frames.slice(0, 3).map((line) => line.trim().replace(/ \(.*[\\/](?=[^\\/]*$)/, ' ('));
  return `${error.name}: ${error.message.slice(0, 200)} ${where.join(' ')}`;
}

/** A list with a stretch left out: great stretches first. */
export function* shorter<T>(list: readonly T[]): Generator<readonly T[]> {
  for (let length = list.length; length >= 1; length = length === 1 ? 0 : Math.ceil(length / 2)) {
    for (let from = 0; from < list.length; from += length) {
      const rest = [...list.slice(0, from), ...list.slice(from + length)];
      if (rest.length < list.length) yield rest;
    }
  }
}

/** A text by lines, and by characters once it is short. */
export function* shorterText(text: string): Generator<string> {
  for (const lines of shorter(text.split('\n'))) yield lines.join('\n');
  if (text.length <= 120) for (const characters of shorter(Array.from(text))) yield characters.join('');
}
