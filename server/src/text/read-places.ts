import type { Section } from '../format/words.ts';
import { lookUp } from './names.ts';
import { valueAt } from './problem.ts';
import type { Hands, Id, Loop, Mentioned, Place } from '../model/procedure.ts';
import { hasSide } from './read-circuit.ts';
import { pinsOf } from './read-network.ts';
import { grouped, remembered } from '../model/remembered.ts';
import { someOf } from './some-of.ts';
import { entriesOf } from './action-reader.ts';
import type { ActionReader } from './action-reader.ts';
import { isMonitor } from './read-instruments.ts';
import { goesWithAnother } from './read-sources.ts';
import type { WrittenId } from './read-sources.ts';
import type { Path } from '../model/where.ts';

/** By connector and part the loops that pass through it. */
const loopsThrough = remembered((loops: ReadonlyMap<Id, Loop>) =>
  grouped([...loops.values()].flatMap((loop) => loop.elements.map(({ id }) => [id, loop] as const))),
);

/** Whether every loop could be read as a whole. */
export const areComplete = remembered((loops: ReadonlyMap<Id, Loop>): boolean =>
  [...loops.values()].every(({ complete }) => complete),
);

/** A side of a connector, with the loop whose pins a load there bridges. null: reported, or not readable. */
export function placeOf(
  written: string,
  at: Path,
  loop: string | undefined,
  context: ActionReader,
): Place | null {
  const { reader, bench, path } = context;
  const [connector = '', side] = written.split('.');
  const within = [0, connector.length] as const;
  const section = lookUp(reader.names, connector, ['connectors'], valueAt(at, within), reader.report);
  if (section !== null && side === undefined) {
    const message = `A load sits on one side of a connector: \`${connector}.monitor\` or \`${connector}.end\`.`;
    reader.report({ rule: 'wrong-value', at: valueAt(at), message, subject: connector });
    return null;
  }
  const passing = loopsThrough(bench.loops).get(connector) ?? [];
  let chosen: Id | null = null;
  if (loop !== undefined) {
    const spot = valueAt([...path, 'loop']);
    if (lookUp(reader.names, loop, ['loops'], spot, reader.report) === null || section === null) return null;
    const found = bench.loops.get(loop);
    if (found === undefined) return null;
    if (!passing.includes(found)) {
      // A path that could not be read may well pass through it, and so may it through what a routine is given.
      if (!found.complete || !bench.connectors.has(connector)) return null;
      const message = `The loop \`${loop}\` does not pass through \`${connector}\`.`;
      reader.report({ rule: 'wrong-loop', at: spot, message, subject: loop });
      return null;
    }
    chosen = loop;
  } else if (section !== null && passing.length > 1) {
    const named = someOf(passing.map(({ id }) => `\`${id}\``));
    const message = `Several loops pass through \`${connector}\`: ${named}. Say which one with \`loop\`.`;
    reader.report({ rule: 'missing-key', at: valueAt(at), message, subject: connector });
    return null;
  } else {
    chosen = passing[0]?.id ?? null;
  }
  const found = section === null ? undefined : bench.connectors.get(connector);
  if (found === undefined || side === undefined || !hasSide(found, side, at, reader.report)) return null;
  return { connector, side, loop: chosen };
}

const touchable = ['parts', 'connectors', 'instruments', 'assemblies'] as const;
const visible = [...touchable, 'sources', 'loads'] as const;

/** What hands touch: sides and terminals are checked and reduced to their connector. null where one is not readable. */
export function touchedBy(named: readonly WrittenId[], context: ActionReader): Hands | null {
  const [first] = named;
  if (first === undefined) return 'not said';
  if (first.id === 'nothing') return 'nothing';
  return unlessUnread(named.map((written) => mentionedAs(touchable, written, context)));
}

/** What is only looked at, read in the same way: whatever can be seen, hands or not. */
export function lookedAtBy(named: readonly WrittenId[], context: ActionReader): readonly Mentioned[] | null {
  return unlessUnread(named.map((written) => mentionedAs(visible, written, context)));
}

/** Each once, or null where one could not be read. */
export function unlessUnread(found: readonly (Mentioned | null)[]): readonly Mentioned[] | null {
  const known = found.filter((one) => one !== null);
  if (known.length < found.length) return null;
  const firsts = new Map(known.toReversed().map((one) => [one.id, one]));
  return known.filter((one) => firsts.get(one.id) === one);
}

function mentionedAs(
  sections: readonly Section[],
  { id: written, path }: WrittenId,
  { reader, bench, path: step }: ActionReader,
): Mentioned | null {
  const [id = '', side, pin] = written.split('.');
  const wanted = side === undefined ? sections : (['connectors'] as const);
  const section = lookUp(reader.names, id, wanted, valueAt(path, [0, id.length]), reader.report);
  if (section === null) return null;
  // Instruments that are held in the hand are seen, and are no part of a circuit.
  if (sections === touchable && section === 'instruments') {
    if (!isMonitor(id, bench, valueAt(path), reader.report)) return null;
  }
  if (section === 'sources' && goesWithAnother(id, valueAt(path), reader)) return null;
  if (!entriesOf(section, bench).has(id)) return null;
  const members = bench.assemblies.get(id)?.members ?? [id];
  const found: Mentioned = { id, members, place: path.slice(step.length) };
  const connector = bench.connectors.get(id);
  if (side !== undefined && connector !== undefined && !hasSide(connector, side, path, reader.report))
    return null;
  if (pin === undefined) return found;
  const isKnown = bench.network.complete && areComplete(bench.loops);
  const pins = pinsOf(id, bench.loops, bench.network.elements);
  if (pins.includes(pin) || pins.length === 0 || !isKnown) return found;
  const at = valueAt(path, [written.length - pin.length, written.length]);
  const message = `No loop uses pin ${pin} of \`${id}\`; those in use are ${someOf(pins)}.`;
  reader.report({ rule: 'wrong-id', at, message, subject: written });
  return null;
}
