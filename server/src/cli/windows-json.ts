import { classesOfGood } from '../readings/classes.ts';
import { placeInWords } from '../bench/hardware.ts';
import type { Accepted } from '../readings/accepted.ts';
import { windowAt } from '../readings/at-entered.ts';
import { benchInWords } from '../readings/bench-in-words.ts';
import type { EntryRow } from '../readings/by-entry.ts';
import { guardedOf } from '../readings/guarded.ts';
import type { GoodOnBench, Reading, Readings } from '../readings/reading.ts';
import type { Explanation } from '../readings/explain.ts';
import type { Analysis } from '../project/analysis.ts';
import type { Procedure, Quantity } from '../model/procedure.ts';
import { refTo } from '../model/where.ts';
import type { Entered } from './entered.ts';
import { jsonNumber, placesOf, printJson } from './json.ts';
import { readingsAsked } from './windows-asked.ts';
import type { Asked } from './windows-asked.ts';

const units: Readonly<Record<Quantity, string>> = {
  resistance: 'ohm',
  voltage: 'volt',
  insulation: 'ohm',
  current: 'ampere',
};

export function windowsJson(analysis: Analysis, readings: Readings, complete: boolean, asked: Asked): string {
  const places = placesOf(analysis);
  const procedure = analysis.procedure().value;
  return printJson({
    document: 'windows',
    version: 1,
    file: analysis.file,
    complete,
    readings: readingsAsked(readings, asked).flatMap((reading) => {
      const step = procedure.steps[reading.index];
      if (step === undefined) return [];
      return [
        {
          step: places.step(refTo(step)),
          of: reading.of,
          quantity: reading.quantity,
          unit: units[reading.quantity],
          instrument: reading.instrument?.id ?? null,
          accepted: jsonAccepted(reading.accepted),
          printed: reading.printed,
          'by-entry': reading.byEntry.map(jsonRow),
          ...jsonEntered(procedure, reading, asked.entered),
          guarded: jsonGuarded(reading),
          good: reading.good.map((good) => jsonGood(reading, good)),
          ...jsonWhy(asked.explanation(reading)),
          codes: readings.codes.find(({ index }) => index === reading.index)?.codes ?? [],
        },
      ];
    }),
  });
}

/** The window at what was entered; absent where nothing was, or the window does not depend on it. */
function jsonEntered(
  procedure: Procedure,
  reading: Reading,
  entered: Entered,
): { readonly 'at-entered'?: unknown } {
  const row = windowAt(procedure, reading, entered);
  return row === null ? {} : { 'at-entered': jsonRow(row) };
}

function jsonWhy(explanation: Explanation | null): { readonly why?: unknown } {
  if (explanation === null) return {};
  const { rootSumSquare, drawn, shares, assumed, bench, entered } = explanation;
  const interval = ({ least, most }: { readonly least: number; readonly most: number }): object => ({
    least: jsonNumber(least),
    most: jsonNumber(most),
  });
  return {
    why: {
      'bench-text': benchInWords(bench),
      entered,
      'root-sum-square': interval(rootSumSquare),
      drawn: drawn === null ? null : { draws: drawn.draws, part: 0.95, ...interval(drawn) },
      shares: shares.map(({ part, share }) => ({ part, share: jsonNumber(share) })),
      assumed,
    },
  };
}

/** On the nearest bench. */
function jsonGuarded(reading: Reading): unknown {
  const [nearest] = reading.good;
  const guarded = nearest === undefined ? null : guardedOf(reading, nearest);
  if (guarded === null || guarded === 'empty') return guarded;
  return { least: jsonNumber(guarded.least), most: jsonNumber(guarded.most) };
}

function jsonRow({ bands, accepted, printed }: EntryRow): object {
  const entered = bands.map(({ entry, entered: { least, most } }) => [entry, { least, most }] as const);
  return { entered: Object.fromEntries(entered), accepted: jsonAccepted(accepted), printed };
}

function jsonAccepted(accepted: Accepted | null): unknown {
  if (accepted === null || accepted === 'open') return accepted;
  return { least: jsonNumber(accepted.least), most: jsonNumber(accepted.most), from: accepted.from };
}

function jsonGood(reading: Reading, good: GoodOnBench): unknown {
  const { hardware, power } = good.arrival.state;
  const { indication } = good;
  const resolution = reading.instrument?.resolution ?? 0;
  const shows = reading.accepted === null ? null : classesOfGood(good, reading.accepted, resolution);
  return {
    bench: {
      ignition: power.ignitionOn ? 'on' : 'off',
      connectors: Object.fromEntries(hardware.connectors),
      loads: Object.fromEntries([...hardware.loads].map(([id, place]) => [id, placeInWords(place)])),
    },
    'bench-text': benchInWords(good.arrival.state),
    shows: shows ?? [],
    least: jsonNumber(indication?.value?.least ?? null),
    nominal: jsonNumber(indication?.value?.nominal ?? null),
    most: jsonNumber(indication?.value?.most ?? null),
    exact: good.exact,
    floating: good.floating,
  };
}
