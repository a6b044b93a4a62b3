import { quantities } from '../format/words.ts';
import type { Dimension } from '../quantity/quantity.ts';
import { checkEntry } from './check-entry.ts';
import { keyAt, valueAt } from './problem.ts';
import type { Problem, Spot } from './problem.ts';
import type { Id, MeterRange, Monitor, Multimeter } from '../model/procedure.ts';
import { accuracy, limitOn, positive, range, span } from './quantities.ts';
import { byId, entriesIn, kindOf } from './read-entries.ts';
import type { RawEntry } from './read-entries.ts';
import type { Reader } from './reader.ts';
import { entryOf } from './tree.ts';
import type { Path } from '../model/where.ts';

export interface Instruments {
  readonly monitors: ReadonlyMap<Id, Monitor>;
  readonly multimeters: ReadonlyMap<Id, Multimeter>;
}

export function readInstruments(reader: Reader): Instruments {
  const read = entriesIn('instruments', reader).flatMap((entry): (Monitor | Multimeter)[] => {
    switch (kindOf('instruments', entry, reader.report)) {
      case 'monitor':
        return [readMonitor(entry, reader)];
      case 'multimeter':
        return [readMultimeter(entry, reader)];
      case null:
        return [];
    }
  });
  return {
    monitors: byId(read.filter((one) => one.kind === 'monitor')),
    multimeters: byId(read.filter((one) => one.kind === 'multimeter')),
  };
}

function readMonitor({ id, path, node }: RawEntry, { report }: Reader): Monitor {
  const { values } = checkEntry('monitor', node, path, { named: `The monitor \`${id}\`` }, report);
  const at = (...keys: string[]) => [...path, ...keys];
  const leak = limitOn('below', values.leak, at('leak'), report);
  return {
    id,
    path,
    kind: 'monitor',
    ...rangeOf(values, 'resistance', path, report),
    testCurrent: span(values['test-current'], 'current', at('test-current'), report),
    tooLow: limitOn('below', values.codes?.['too-low'], at('codes', 'too-low'), report),
    tooHigh: limitOn('above', values.codes?.['too-high'], at('codes', 'too-high'), report),
    leakBelow: leak !== null && 'below' in leak ? leak.below : null,
  };
}

function readMultimeter({ id, path, node }: RawEntry, { report }: Reader): Multimeter {
  const named = `The multimeter \`${id}\``;
  const { values, bad } = checkEntry('multimeter', node, path, { named }, report);
  const has = (key: string): boolean => entryOf(node, key) !== undefined;
  if (!quantities.some(has) && !has('clamp') && bad.size === 0) {
    const message = `${named} needs \`resistance\`, \`voltage\`, \`insulation\`, \`current\` or \`clamp\`: what it measures, and how well.`;
    report({ rule: 'missing-key', at: keyAt(path), message, subject: id });
  }
  if (has('leads') && has('zeroed')) {
    const message =
      'Leads that are zeroed are in no reading: write either `leads` or `zeroed: true`, and remove the other.';
    report({ rule: 'wrong-value', at: keyAt([...path, 'zeroed']), message, subject: id });
  } else if (values.resistance !== undefined && !has('leads') && !has('zeroed')) {
    const message = `${named} measures resistance, so it needs \`leads\`, such as \`0.1..0.3 Ω\`, or \`zeroed: true\`.`;
    report({ rule: 'missing-key', at: keyAt(path), message, subject: id });
  }
  const { resistance, voltage, insulation, current, clamp } = values;
  const ohms = [...path, 'resistance'];
  const volts = [...path, 'voltage'];
  return {
    id,
    path,
    kind: 'multimeter',
    resistance:
      resistance === undefined
        ? null
        : {
            ...rangeOf(resistance, 'resistance', ohms, report),
            testCurrent: span(resistance['test-current'], 'current', [...ohms, 'test-current'], report),
            further: furtherRanges(resistance, ohms, report),
          },
    voltage:
      voltage === undefined
        ? null
        : {
            ...rangeOf(voltage, 'voltage', volts, report),
            input: span(voltage.input, 'resistance', [...volts, 'input'], report),
          },
    insulation:
      insulation === undefined
        ? null
        : {
            ...rangeOf(insulation, 'resistance', [...path, 'insulation'], report),
            discharge: positive(insulation.discharge, 'time', [...path, 'insulation', 'discharge'], report),
          },
    current:
      current === undefined
        ? null
        : {
            ...rangeOf(current, 'current', [...path, 'current'], report),
            burden: span(current.burden, 'resistance', [...path, 'current', 'burden'], report),
          },
    clamp: clamp === undefined ? null : rangeOf(clamp, 'current', [...path, 'clamp'], report),
    leads: span(values.leads, 'resistance', [...path, 'leads'], report),
    zeroed: values.zeroed === true,
  };
}

interface RawRange {
  readonly range?: string | undefined;
  readonly accuracy?: string | undefined;
  readonly resolution?: string | undefined;
}

function rangeOf(raw: RawRange, dimension: Dimension, path: Path, report: Reader['report']): MeterRange {
  return {
    range: range(raw.range, dimension, [...path, 'range'], report),
    accuracy: accuracy(raw.accuracy, dimension, [...path, 'accuracy'], report),
    resolution: positive(raw.resolution, dimension, [...path, 'resolution'], report),
  };
}

interface RawRanges extends RawRange {
  readonly further?: readonly RawRange[] | undefined;
}

/** Each has to reach further than the one before it. */
function furtherRanges(raw: RawRanges, path: Path, report: Reader['report']): readonly MeterRange[] {
  const further = raw.further ?? [];
  let end = range(raw.range, 'resistance', [...path, 'range'], () => undefined)?.most ?? 0;
  return further.map((one, index) => {
    const at = [...path, 'further', index];
    const read = rangeOf(one, 'resistance', at, report);
    if (read.range !== null && read.range.most <= end) {
      const message =
        'This range ends no further than the one before it. Write the ranges with the least first.';
      report({ rule: 'wrong-value', at: valueAt([...at, 'range']), message });
    }
    end = Math.max(end, read.range?.most ?? 0);
    return read;
  });
}

/** Whether an instrument can stand where a part of the vehicle is meant; otherwise the problem has been reported. */
export function isMonitor(
  id: Id,
  { multimeters }: Pick<Instruments, 'multimeters'>,
  at: Spot,
  report: (problem: Problem) => void,
): boolean {
  const other = multimeters.get(id);
  if (other === undefined) return true;
  const message = `\`${id}\` is a multimeter; expected a monitor.`;
  const related = [{ at: keyAt(other.path), message: `\`${id}\` is named here.` }];
  report({ rule: 'wrong-id', at, message, subject: id, related });
  return false;
}
