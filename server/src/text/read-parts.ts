import { laterEntryKeys } from '../format/later.ts';
import { checkEntry } from './check-entry.ts';
import { partFacts } from '../model/part-kinds.ts';
import type { Entry, Id, Load, Part } from '../model/procedure.ts';
import { aboveZero, span } from './quantities.ts';
import { byId, entriesIn, kindOf } from './read-entries.ts';
import type { RawEntry } from './read-entries.ts';
import { formOf } from './read-form.ts';
import { readTrack } from './read-potentiometer.ts';
import { ofSeries, rated, readResistance, stated, statedCold } from './read-resistance.ts';
import { withstood } from './read-withstands.ts';
import type { Reader } from './reader.ts';
import type { Resistance } from '../model/resistance.ts';

export function readLoads(reader: Reader): ReadonlyMap<Id, Load> {
  return byId(entriesIn('loads', reader).flatMap((entry) => readLoad(entry, reader) ?? []));
}

function readLoad(entry: RawEntry, { report }: Reader): Load | null {
  const { id, path, node } = entry;
  const kind = kindOf('loads', entry, report);
  if (kind === null) return null;
  const rules = { named: `The load \`${id}\``, later: laterEntryKeys.loads };
  const withstands = withstood(node, path, report);
  const load = (resistance: Resistance | null, opensShortingBar = false): Load => {
    return { id, path, kind, resistance, opensShortingBar, withstands };
  };
  const form = formOf('loads', kind, entry, report);
  switch (form) {
    case null:
      return load(null);
    case 'lamp-load-by-resistance': {
      const checked = checkEntry(form, node, path, rules, report);
      return load(statedCold(checked, path, report), checked.values['opens-shorting-bar']);
    }
    case 'lamp-load-by-rating': {
      const checked = checkEntry(form, node, path, rules, report);
      return load(rated('lamp-rating', checked, path, report), checked.values['opens-shorting-bar']);
    }
    case 'resistor-load': {
      const checked = checkEntry(form, node, path, rules, report);
      return load(ofSeries(checked, path, report), checked.values['opens-shorting-bar']);
    }
  }
}

export function readParts(reader: Reader, entries: ReadonlyMap<Id, Entry>): ReadonlyMap<Id, Part> {
  return byId(entriesIn('parts', reader).flatMap((entry) => readPart(entry, reader, entries) ?? []));
}

function readPart(entry: RawEntry, reader: Reader, entries: ReadonlyMap<Id, Entry>): Part | null {
  const { report } = reader;
  const { id, path, node } = entry;
  const kind = kindOf('parts', entry, report);
  if (kind === null) return null;
  const rules = { named: `The part \`${id}\``, later: laterEntryKeys.parts };
  const part = {
    id,
    path,
    kind,
    form: partFacts[kind].form,
    live: false,
    statedInert: false,
    noFire: null,
    voltage: null,
    draws: null,
    wiper: null,
    withstands: kind === 'initiator' ? null : withstood(node, path, report),
  };
  switch (kind) {
    case 'initiator': {
      const { values } = checkEntry(kind, node, path, rules, report);
      return {
        ...part,
        resistance: stated(values.resistance, path, report),
        live: values.live ?? false,
        statedInert: values.live === false,
        noFire: span(values['no-fire'], 'current', [...path, 'no-fire'], report),
      };
    }
    case 'hv-section': {
      const { values } = checkEntry(kind, node, path, rules, report);
      const voltage = span(values.voltage, 'voltage', [...path, 'voltage'], report);
      return { ...part, resistance: stated(values.resistance, path, report), live: true, voltage };
    }
    case 'consumer': {
      const { values } = checkEntry(kind, node, path, rules, report);
      const amperes = aboveZero(values.draws, 'current', [...path, 'draws'], report);
      return { ...part, resistance: null, draws: { amperes, always: values.always === true } };
    }
    case 'potentiometer':
      return { ...part, ...readTrack(entry, rules, report) };
    case 'cable':
    case 'rotary-coupling':
    case 'series':
    case 'resistor':
    case 'heater':
    case 'switch':
    case 'coil':
    case 'thermistor':
    case 'rtd':
    case 'lamp':
    case 'fuse':
      return { ...part, resistance: readResistance(kind, entry, rules, reader, entries) };
  }
}
