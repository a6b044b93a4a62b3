import {
  parseAccuracy,
  parseExact,
  parseLimit,
  parseRating,
  parseSpan,
  parseWire,
} from '../quantity/quantity.ts';
import type { Accuracy, Dimension, Limit, Parsed, Span } from '../quantity/quantity.ts';
import { valueAt } from './problem.ts';
import type { Problem } from './problem.ts';
import type { SensorTolerance, WireSize } from '../model/resistance.ts';
import type { Path } from '../model/where.ts';

/* Quantities of the file. Each reports what cannot be read at its exact characters and is null then. */

type Report = (problem: Problem) => void;

function read<T>(parsed: Parsed<T>, path: Path, report: Report): T | null {
  if (parsed.ok) return parsed.value;
  report({ rule: 'quantity', at: valueAt(path, [parsed.from, parsed.to]), message: parsed.message });
  return null;
}

function refuse(path: Path, text: string, message: string, report: Report): null {
  report({ rule: 'quantity', at: valueAt(path, [0, text.length]), message });
  return null;
}

/** null also where the text is absent: what is needed and absent has been reported before. */
export function span(
  text: string | undefined,
  dimension: Dimension,
  path: Path,
  report: Report,
): Span | null {
  return text === undefined ? null : read(parseSpan(text, dimension), path, report);
}

/** A span with two different ends; `signed`: it may lie on either side of zero. */
export function range(
  text: string | undefined,
  dimension: Dimension,
  path: Path,
  report: Report,
  signed = false,
): Span | null {
  const found = text === undefined ? null : read(parseSpan(text, dimension, signed), path, report);
  if (found === null || text === undefined || found.least < found.most) return found;
  return refuse(
    path,
    text,
    `One value is not enough here; expected a range, such as \`${dimension === 'voltage' ? '0..600 V' : '2.4..3.6 Ω'}\`.`,
    report,
  );
}

/** A span that lies above zero as a whole. */
export function aboveZero(
  text: string | undefined,
  dimension: Dimension,
  path: Path,
  report: Report,
): Span | null {
  const found = span(text, dimension, path, report);
  if (found === null || text === undefined || found.least > 0) return found;
  return refuse(path, text, 'This must be more than zero, also at its least.', report);
}

export function exact(
  text: string | undefined,
  dimension: Dimension,
  path: Path,
  report: Report,
): number | null {
  return text === undefined ? null : read(parseExact(text, dimension), path, report);
}

/** An exact value above zero. */
export function positive(
  text: string | undefined,
  dimension: Dimension,
  path: Path,
  report: Report,
): number | null {
  const found = exact(text, dimension, path, report);
  if (found === null || text === undefined || found > 0) return found;
  return refuse(path, text, 'This must be more than zero.', report);
}

export function accuracy(
  text: string | undefined,
  dimension: Dimension,
  path: Path,
  report: Report,
): Accuracy | null {
  return text === undefined ? null : read(parseAccuracy(text, dimension), path, report);
}

export function limit(
  text: string,
  dimension: Dimension,
  path: Path,
  report: Report,
  signed = false,
): Limit | null {
  return read(parseLimit(text, dimension, signed), path, report);
}

/** A limit on one side only: `below 1 Ω` for a code that is set when a loop reads too low. */
export function limitOn(
  side: 'below' | 'above',
  text: string | undefined,
  path: Path,
  report: Report,
): Limit | null {
  const found = text === undefined ? null : limit(text, 'resistance', path, report);
  if (found === null || text === undefined || side in found) return found;
  const other = side === 'below' ? 'below 1 Ω' : 'above 4.5 Ω';
  return refuse(
    path,
    text,
    `This is a limit on the wrong side; expected \`${side}\`, such as \`${other}\`.`,
    report,
  );
}

export function wire(text: string | undefined, path: Path, report: Report): WireSize | null {
  return text === undefined ? null : read(parseWire(text), path, report);
}

export function rating(
  text: string | undefined,
  path: Path,
  report: Report,
): { readonly volts: number; readonly watts: number } | null {
  return text === undefined ? null : read(parseRating(text), path, report);
}

/** How far a sensor may be off: `3 %` of its resistance, or `1 °C`, with or without ± in front. More than nothing. */
export function sensorTolerance(
  text: string | undefined,
  path: Path,
  report: Report,
): SensorTolerance | null {
  if (text === undefined) return null;
  const expected = '`3 %` or `1 °C`';
  if (/°C|degC/.test(text)) {
    const found = read(parseAccuracy(text, 'temperature'), path, report);
    if (found === null) return null;
    if (found.constant > 0 && found.digits === 0) return { kelvin: found.constant };
  } else {
    const found = read(parseAccuracy(text, 'resistance'), path, report);
    if (found === null) return null;
    if (found.fraction > 0 && found.constant === 0 && found.digits === 0) return { fraction: found.fraction };
  }
  return refuse(
    path,
    text,
    `A sensor is off by more than nothing, in percent or in °C; expected ${expected}.`,
    report,
  );
}
