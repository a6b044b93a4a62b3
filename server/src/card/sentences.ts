import { stepNumber } from '../model/where.ts';
import type { Connector, Hands, Id, Mentioned, Place, Procedure, Step } from '../model/procedure.ts';
import { grouped } from '../model/remembered.ts';
import { formatWait } from '../quantity/print.ts';
import type { CardProof, CardStep, Words } from './model.ts';
import { sayMeasure } from './measure.ts';
import { sayProof } from './proof.ts';
import { sayWiggle } from './wiggle.ts';
import { closed, listed, listedIds, sourceWords, thingWords } from './words.ts';

/** What a step says: one sentence in the imperative, what is to be known beside it, and what is to be written down. */
export type Said = Pick<CardStep, 'kind' | 'action' | 'details' | 'blanks'>;

export function sayStep(procedure: Procedure, step: Step, proofs: readonly CardProof[]): Said {
  switch (step.verb) {
    case 'ignition':
      return act([ignitionText[step.to]]);
    case 'disconnect':
      return step.connector === null
        ? act(['Disconnect ', ...sourceWords(procedure, step.source), ', then insulate its cable end.'])
        : act([
            'Disconnect ',
            ...sourceWords(procedure, step.source),
            ': open connector ',
            { id: step.connector },
            ' and secure it so that nobody can close it.',
          ]);
    case 'reconnect':
      return act([
        'Reconnect ',
        ...sourceWords(procedure, step.source),
        ...(step.connector === null
          ? ['.']
          : [': close connector ', { id: step.connector }, ' until it locks.']),
      ]);
    case 'wait':
      return sayWait(step.seconds);
    case 'prove-dead':
      return sayProof(
        procedure,
        step,
        proofs.find((proof) => proof.index === step.index),
      );
    case 'unlock':
      return act(['Unlock connector ', { id: step.connector }, ' and leave it plugged in.']);
    case 'unplug':
      return act(['Unplug connector ', { id: step.connector }, '.']);
    case 'plug':
      return act(['Plug connector ', { id: step.connector }, ' in until it locks.']);
    case 'fit':
      return sayFit(procedure, step.load, 'Fit ', ' at ', step.at);
    case 'remove':
      return act(['Remove ', { id: step.load }, '.']);
    case 'move':
      return sayFit(procedure, step.load, 'Move ', ' to ', step.to);
    case 'read':
      return sayRead(procedure, step.loops);
    case 'measure':
      return sayMeasure(procedure, step);
    case 'wiggle':
      return sayWiggle(
        procedure,
        step,
        step.by === 'monitor' ? sayRead(procedure, step.loops) : sayMeasure(procedure, step),
      );
    case 'read-codes':
      return {
        ...act(['Read the codes of ', { id: step.monitor }, ' and write them down.']),
        kind: 'read',
        blanks: ['Codes read'],
      };
    case 'clear-codes':
      return act(['Clear the codes of ', { id: step.monitor }, '.']);
    case 'inspect':
      return {
        ...act(
          [{ strong: 'Inspect: ' }, { said: closed(step.text) }],
          [...handsWords(procedure, step.at), ...seenWords(procedure, step.of)],
        ),
        kind: 'read',
      };
    case 'do':
      return act(
        [{ said: closed(step.text) }],
        [...handsWords(procedure, step.at), ...seenWords(procedure, step.of)],
      );
    case 'replace':
      return act(
        ['Replace ', ...listedThings(procedure, step.what), '.'],
        [['Then put every connector back as it was before this step.']],
      );
    case 'conclude':
      return { ...act(concludeWords(procedure, step.what)), kind: 'conclude' };
    case 'go':
      return { ...act(goWords(procedure, step.to)), kind: 'go' };
    case 'stop':
      return {
        ...act([{ strong: step.leaves.length === 0 ? 'End. ' : 'Stop work. ' }, { said: closed(step.text) }]),
        kind: 'stop',
      };
    case 'run':
      return { ...act([{ strong: step.runs }, ...callWords(procedure, step)]), kind: 'call' };
    case 'broken':
      return { ...act(['This step could not be read from the file.']), kind: 'broken' };
  }
}

/** Which steps a call stands for: the first and the last of its own. */
function callWords({ steps }: Procedure, { index, calls }: Step): Words {
  let first: Step | null = null;
  let last: Step | null = null;
  for (let at = index + 1; at < steps.length; at += 1) {
    const step = steps[at];
    if (step === undefined || step.calls.length <= calls.length) break;
    if (step.calls.length > calls.length + 1) continue;
    first ??= step;
    last = step;
  }
  if (first === null || last === null) return [': nothing is to be done.'];
  const [from, to] = [stepNumber(first), stepNumber(last)];
  if (first === last) return [': do step ', { step: from }, '.'];
  return [': do steps ', { step: from }, ' to ', { step: to }, '.'];
}

const ignitionText = {
  on: 'Switch the ignition on.',
  off: 'Switch the ignition off.',
  cycle: 'Switch the ignition off, then on again.',
} as const;

function act(action: Words, details: readonly Words[] = []): Said {
  return { kind: 'act', action, details, blanks: [] };
}

function sayWait(seconds: number): Said {
  const least: Words = ['Wait at least ', { strong: formatWait(seconds) }, '.'];
  if (seconds === 0) return act(least);
  return { ...act([...least, ' Do not shorten.']), blanks: ['Started at', 'Ended at'] };
}

function sayFit(procedure: Procedure, load: Id, verb: string, at: string, place: Place): Said {
  const loop = place.loop === null ? undefined : procedure.loops.get(place.loop);
  const pins = loop?.pins.get(place.connector);
  const pinText = pins === undefined ? '' : ` (pins ${pins[0]} and ${pins[1]})`;
  const action: Words = [verb, { id: load }, at, { id: place.connector }, `, ${place.side} side${pinText}.`];
  const details: Words[] = [];
  const connector = procedure.connectors.get(place.connector);
  if (loop !== undefined && connector !== undefined) details.push(halfWords(connector, place, loop));
  if (procedure.loads.get(load)?.opensShortingBar === true)
    details.push([{ id: load }, ' is an adapter: it opens the shorting bar on its side.']);
  return act(action, details);
}

/** Which half of the connector a side is, told by what stands next to it in the loop. */
function halfWords(
  { sides }: Connector,
  place: Place,
  loop: { readonly id: Id; readonly monitor: Id | null; readonly elements: readonly { readonly id: Id }[] },
): Words {
  const index = loop.elements.findIndex((element) => element.id === place.connector);
  const neighbour =
    place.side === sides[1]
      ? loop.elements[index + 1]?.id
      : index > 0
        ? loop.elements[index - 1]?.id
        : loop.monitor;
  const towards: Words =
    neighbour === undefined || neighbour === null ? [] : [' with the wire to ', { id: neighbour }];
  return [`The ${place.side} side is the connector half`, ...towards, '. Loop ', { id: loop.id }, '.'];
}

function sayRead(procedure: Procedure, loops: readonly Id[]): Said {
  return { ...act(['Read ', ...readWords(procedure, loops), '.']), kind: 'read' };
}

function readWords(procedure: Procedure, loops: readonly Id[]): Words {
  const byMonitor = grouped(loops.map((id) => [procedure.loops.get(id)?.monitor ?? null, id] as const));
  return listed(
    [...byMonitor].map(([monitor, ids]): Words => [
      ...listedIds(ids, 'and'),
      ...(monitor === null ? [] : [' on ', { id: monitor }]),
    ]),
    'and',
  );
}

function listedThings(procedure: Procedure, things: readonly Mentioned[]): Words {
  return listed(
    things.map(({ id }) => thingWords(procedure, id)),
    'and',
  );
}

function handsWords(procedure: Procedure, at: Hands): readonly Words[] {
  if (at === 'not said') return [];
  if (at === 'nothing') return [['Touch no connector and no wire.']];
  return [['Your hands are at ', ...listedThings(procedure, at), '.']];
}

function seenWords(procedure: Procedure, of: readonly Mentioned[]): readonly Words[] {
  return of.length === 0 ? [] : [['Only look at ', ...listedThings(procedure, of), '.']];
}

function concludeWords(procedure: Procedure, what: readonly Mentioned[] | 'none'): Words {
  const heading = { strong: 'Conclusion: ' };
  if (what === 'none') return [heading, 'no fault found.'];
  const things = what.map(({ id }) => thingWords(procedure, id));
  if (things.length === 1) return [heading, 'the fault is in ', ...things.flat(), '.'];
  return [heading, 'the fault is in one of ', ...listed(things, 'or'), '.'];
}

function goWords(procedure: Procedure, to: number | 'end' | null): Words {
  if (to === 'end') return ['Go to the end of the card.'];
  const target = to === null ? undefined : procedure.steps[to];
  return target === undefined
    ? ['Go to a step that is not in the file.']
    : ['Go to step ', { step: stepNumber(target) }, '.'];
}
