import { laterEntryKeys } from '../format/later.ts';
import { checkEntry } from './check-entry.ts';
import type { DraftLoop } from './draft-loop.ts';
import { lookUp } from './names.ts';
import { keyAt, valueAt } from './problem.ts';
import type { Spot } from './problem.ts';
import type { Connector, Id, Loop, Part } from '../model/procedure.ts';
import { checkShared } from './problems/shared-in-loops.ts';
import { pinPair } from './read-circuit.ts';
import { byId, entriesIn } from './read-entries.ts';
import type { RawEntry } from './read-entries.ts';
import { isMonitor } from './read-instruments.ts';
import type { Instruments } from './read-instruments.ts';
import type { Reader } from './reader.ts';
import type { Path } from '../model/where.ts';

/** What loops are made of. */
export interface LoopElements extends Instruments {
  readonly parts: ReadonlyMap<Id, Part>;
  readonly connectors: ReadonlyMap<Id, Connector>;
}

export function readLoops(reader: Reader, circuit: LoopElements): ReadonlyMap<Id, Loop> {
  const drafts = entriesIn('loops', reader).map((entry) => readLoop(entry, reader, circuit));
  checkShared(drafts, circuit.parts, reader.report);
  return byId(
    drafts.map(({ id, path, monitor, elements, complete, pins }): Loop => {
      const connectors = elements.filter(({ kind }) => kind === 'connector');
      return {
        id,
        path,
        monitor,
        elements: elements.map((element) => ({ kind: element.kind, id: element.id })),
        complete,
        pins: new Map(connectors.map((element) => [element.id, pins.get(element.id)?.pins ?? ['1', '2']])),
      };
    }),
  );
}

function readLoop({ id, path, node }: RawEntry, reader: Reader, circuit: LoopElements): DraftLoop {
  const { report } = reader;
  const rules = { named: `The loop \`${id}\``, later: laterEntryKeys.loops };
  const { values, bad } = checkEntry('loop', node, path, rules, report);
  const written = values.path ?? [];
  const named = new Set(written.slice(1));
  const seen = new Map<Id, Path>();
  const elements: DraftLoop['elements'][number][] = [];
  let monitor: Id | null = null;
  let complete = !bad.has('path') && !bad.has('pins');
  const wrong = (at: Spot, message: string, subject: Id) => {
    report({ rule: 'wrong-loop', at, message, subject });
    complete = false;
  };
  for (const [index, name] of written.entries()) {
    const at = [...path, 'path', index];
    const wanted = index === 0 ? (['instruments'] as const) : (['connectors', 'parts'] as const);
    if (lookUp(reader.names, name, wanted, valueAt(at), report) === null) {
      complete = false;
      continue;
    }
    if (index === 0) {
      if (isMonitor(name, circuit, valueAt(at), report) && circuit.monitors.has(name)) monitor = name;
      else complete = false;
      continue;
    }
    if (seen.has(name)) {
      wrong(
        valueAt(at),
        `\`${name}\` stands in this loop already. Every part and connector stands once.`,
        name,
      );
      continue;
    }
    seen.set(name, at);
    const part = circuit.parts.get(name);
    const last = index === written.length - 1;
    if (part !== undefined) {
      if (part.draws !== null) {
        wrong(
          valueAt(at),
          `\`${name}\` draws a current and has no resistance that a monitor could read. It stands in the network.`,
          name,
        );
      } else if (part.kind === 'potentiometer') {
        const message = `\`${name}\` is a potentiometer: a loop has two conductors, and it has three. It stands in the network, \`between\` one end, the wiper and the other end.`;
        wrong(valueAt(at), message, name);
      } else if (part.form === 'end' && !last) {
        wrong(valueAt(at), `\`${name}\` closes the loop, so it stands last in the path.`, name);
      } else if (part.form === 'two-conductor' && last) {
        wrong(
          valueAt(at),
          `\`${name}\` has two conductors and does not close the loop. The path ends in one part that does: an initiator, a resistor or a lamp.`,
          name,
        );
      }
      elements.push({ kind: 'part', id: name, at });
    } else if (circuit.connectors.has(name)) {
      if (last) {
        wrong(
          valueAt(at),
          `The path ends in the connector \`${name}\`. It ends in one part that closes the loop: an initiator, a resistor or a lamp.`,
          name,
        );
      }
      elements.push({ kind: 'connector', id: name, at });
    } else {
      complete = false;
    }
  }
  const allRead = !bad.has('path') && seen.size === written.length - 1;
  const pins = new Map<Id, { readonly pins: readonly [string, string]; readonly at: Path }>();
  for (const [name, raw] of Object.entries(values.pins ?? {})) {
    const at = [...path, 'pins', name];
    const pair = pinPair(raw);
    // An id that stands behind the monitor too has been looked up there.
    if (pair === null || (named.has(name) && !seen.has(name))) continue;
    if (lookUp(reader.names, name, ['connectors'], keyAt(at), report) === null) {
      complete = false;
    } else if (!seen.has(name)) {
      // A path with an id that could not be read may have meant this one.
      if (allRead) wrong(keyAt(at), `The path of this loop does not pass through \`${name}\`.`, name);
    } else if (pair[0] === pair[1]) {
      wrong(valueAt([...at, 1]), `A loop uses two different pins of a connector.`, name);
    } else {
      pins.set(name, { pins: pair, at });
    }
  }
  return { id, path, monitor, elements, complete, pins };
}
