import { valueAt } from './problem.ts';
import type { Expect, NamedWindow, Quantity } from './procedure.ts';
import { limit, range } from './quantities.ts';
import { quantityFacts } from './quantity-kinds.ts';
import type { Reader } from './reader.ts';
import type { Path } from './where.ts';

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
  const { isSigned } = quantityFacts[quantity];
  return isLimit
    ? limit(written, quantity, path, report, isSigned)
    : range(written, quantity, path, report, isSigned);
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
  const clash = known.find((one, index) => known.slice(0, index).some((other) => overlap(one, other)));
  if (clash !== undefined) {
    const other = known.find((one) => one !== clash && overlap(one, clash));
    const message = `\`${clash.name}\` and \`${other?.name ?? ''}\` have values in common: a reading there would be both.`;
    report({ rule: 'wrong-value', at: valueAt([...path, clash.name]), message, subject: clash.name });
    return null;
  }
  return known.length < read.length ? null : known;
}

function overlap(one: NamedWindow, other: NamedWindow): boolean {
  const [a, b] = [endsOf(one.window), endsOf(other.window)];
  return a.least <= b.most && b.least <= a.most;
}

/** The ends of a window; those that do not exist are infinite. */
export function endsOf(window: NamedWindow['window']): { readonly least: number; readonly most: number } {
  if ('below' in window) return { least: -Infinity, most: window.below };
  if ('above' in window) return { least: window.above, most: Infinity };
  return window;
}
