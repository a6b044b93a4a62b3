import { connectorsOf } from '../bench/circuits.ts';
import type { CursorPlace } from '../text/cursor.ts';
import type { Id, Procedure } from '../text/procedure.ts';
import { describeId } from './hover-id.ts';

/** A word that fits, with what it is. */
export interface Word {
  readonly word: string;
  readonly detail?: string;
}

/** The ids that fit where the cursor stands, as the value of `key` or in a list of it; null: no ids stand there. */
export function idsThatFit(procedure: Procedure, place: CursorPlace): readonly Word[] | null {
  const [section] = place.path;
  const key = place.part === 'item' ? (place.path.findLast((step) => step !== '#') ?? '') : place.key;
  if (section === 'sources') return key === 'feeds' ? described(procedure, feedable(procedure)) : null;
  if (section === 'loops') return key === 'path' ? described(procedure, onPath(procedure, place)) : null;
  return section === 'steps' ? inStep(procedure, place, key) : null;
}

function inStep(procedure: Procedure, { path, entry }: CursorPlace, key: string): readonly Word[] | null {
  const { sources, connectors, loads, loops, monitors, parts } = procedure;
  if (path.includes('outcomes'))
    return [{ word: 'next', detail: 'the step that follows' }, ...stepIds(procedure)];
  switch (key) {
    case 'disconnect':
    case 'reconnect':
      return described(procedure, sources.keys());
    case 'unlock':
    case 'unplug':
    case 'plug':
      return described(procedure, connectors.keys());
    case 'fit':
    case 'remove':
    case 'move':
      return described(procedure, loads.keys());
    case 'read':
    case 'loop':
      return described(procedure, loops.keys());
    case 'read-codes':
    case 'clear-codes':
      return described(procedure, monitors.keys());
    case 'to':
      return sides(procedure);
    case 'at':
      return entry.has('fit') ? sides(procedure) : described(procedure, touchable(procedure));
    case 'replace':
      return described(procedure, touchable(procedure));
    case 'conclude':
      return [...described(procedure, touchable(procedure)), { word: 'none', detail: 'nothing is at fault' }];
    case 'go':
      return stepIds(procedure);
    case 'leaves':
      return [
        ...described(procedure, [...sources.keys(), ...connectors.keys(), ...loads.keys()]),
        { word: 'codes', detail: 'codes stay in the memory' },
        { word: 'repair', detail: 'something is not yet shown to be sound' },
      ];
    default:
      return parts.has(key) ? [] : null;
  }
}

function feedable({ monitors, parts, connectors }: Procedure): readonly Id[] {
  return [...monitors.keys(), ...parts.keys(), ...connectors.keys()];
}

function touchable({ connectors, parts, monitors }: Procedure): readonly Id[] {
  return [...parts.keys(), ...connectors.keys(), ...monitors.keys()];
}

/** First the monitor, then what is not yet on this path; end parts that close another loop are left out. */
function onPath(procedure: Procedure, { items }: CursorPlace): readonly Id[] {
  if (items.length === 0) return [...procedure.monitors.keys()];
  const taken = new Set([...procedure.loops.values()].flatMap((loop) => loop.elements.map(({ id }) => id)));
  const parts = [...procedure.parts.values()].filter(
    ({ id, form }) => form === 'two-conductor' || !taken.has(id),
  );
  return [...procedure.connectors.keys(), ...parts.map(({ id }) => id)].filter((id) => !items.includes(id));
}

/** Both sides of every connector that stands in a loop. */
function sides(procedure: Procedure): readonly Word[] {
  const standing = new Set([...procedure.loops.values()].flatMap(connectorsOf));
  return [...standing].flatMap((id) => described(procedure, [`${id}.monitor`, `${id}.end`]));
}

function stepIds({ steps }: Procedure): readonly Word[] {
  return steps.flatMap(({ id, number }) =>
    id === undefined ? [] : [{ word: id, detail: `step ${number}` }],
  );
}

function described(procedure: Procedure, ids: Iterable<Id>): readonly Word[] {
  return [...ids].map((word) => {
    const [text = ''] = describeId(procedure, word);
    return { word, detail: text.replace(/^\*\*[^*]*\*\*: /, '').replaceAll('*', '') };
  });
}
