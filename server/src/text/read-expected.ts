import { valueAt } from './problem.ts';
import type { Expect, NamedWindow, Quantity } from '../model/procedure.ts';
import { limit, range } from './quantities.ts';
import { quantityFacts } from '../model/quantity-kinds.ts';
import type { Reader } from './reader.ts';
import type { Path } from '../model/where.ts';

type Report = Reader['report'];

/** The window that an author states for a reading; null: it could not be read. */
export function expectOf(written: string, quantity: Quantity, path: Path, report: Report): Expect | null {
  return written.trim() === 'open' ? 'open' : windowOf(written, quantity, path, report);
}

function windowOf(
  written: string,
  quantity: Quantity,
  path: Path,
  report: Report,
): NamedWindow['window'] | null {
  const isLimit = /^\s*(?:below|above)\b/i.test(written);
  const { dimension, isSigned } = quantityFacts[quantity];
  return isLimit
    ? limit(written, dimension, path, report, isSigned)
    : range(written, dimension, path, report, isSigned);
}

/** The further windows of a step in written order; null: one could not be read, or two have values in common. */
export function windowsOf(
  written: unknown,
  quantity: Quantity,
  path: Path,
  report: Report,
): readonly NamedWindow[] | null {
  const entries = Object.entries((written ?? {}) as Readonly<Record<string, string>>);
  const read = entries.map(([name, text]): NamedWindow | null => {
    const window = windowOf(text, quantity, [...path, name], report);
    return window === null ? null : { name, window };
  });
  const known = read.filter((one) => one !== null);
  const [one, other] = overlapping(known);
  if (one !== undefined && other !== undefined) {
    const message = `\`${one.name}\` and \`${other.name}\` have values in common: a reading there would be both.`;
    report({ rule: 'wrong-value', at: valueAt([...path, one.name]), message, subject: one.name });
    return null;
  }
  return known.length < read.length ? null : known;
}

/** Two that have a value in common, the one that is written later first; empty where no two have. */
function overlapping(windows: readonly NamedWindow[]): readonly NamedWindow[] {
  const placed = windows.map((window, at) => ({ window, at, ...endsOf(window.window) }));
  placed.sort((a, b) => a.least - b.least);
  for (const [index, one] of placed.entries()) {
    const below = placed[index - 1];
    if (below === undefined || one.least > below.most) continue;
    return (one.at > below.at ? [one, below] : [below, one]).map(({ window }) => window);
  }
  return [];
}

/** The ends of a window; those that do not exist are infinite. */
export function endsOf(window: NamedWindow['window']): { readonly least: number; readonly most: number } {
  if ('below' in window) return { least: -Infinity, most: window.below };
  if ('above' in window) return { least: window.above, most: Infinity };
  return window;
}
