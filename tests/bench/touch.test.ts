import { expect, test } from 'vitest';
import { changesOf } from '../../server/src/bench/changes.ts';
import type { Change } from '../../server/src/bench/changes.ts';
import { touchesOf } from '../../server/src/bench/touch.ts';
import type { Id, Place } from '../../server/src/model/procedure.ts';
import { typedProcedure } from '../oracle/plain-procedure.ts';
import { randomProcedure } from '../oracle/random-procedure.ts';

const seeds = Array.from({ length: 200 }, (_, at) => at + 1);
const before: Place = { connector: 'where-it-was', side: 'monitor', loop: null };

/** What hands have to come to for a change to come about; none where it is switched or read from afar. */
function changedByHand(change: Change): readonly Id[] {
  switch (change.of) {
    case 'connector':
      return [change.id];
    case 'load':
      return [
        ...(change.before === 'fitted' ? [before.connector] : []),
        ...(change.at === null ? [] : [change.at.connector]),
      ];
    case 'things':
      return change.replaced.flatMap(({ members }) => members);
    case 'ignition':
    case 'source':
    case 'codes':
    case 'time':
      return [];
  }
}

test('whatever a step changes by hand, hands touch', () => {
  const steps = seeds.flatMap((seed) => typedProcedure(randomProcedure(seed)).steps);
  const changed = new Set<Change['of']>();
  for (const step of steps) {
    const touched = touchesOf(step, () => before).map(({ id }) => id);
    for (const change of changesOf(step)) {
      const byHand = changedByHand(change);
      expect(touched, JSON.stringify(step)).toEqual(expect.arrayContaining([...byHand]));
      if (byHand.length > 0) changed.add(change.of);
    }
  }
  expect([...changed].sort()).toEqual(['connector', 'load', 'things']);
});
