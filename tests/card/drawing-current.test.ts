import { expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { plainWords } from '../../server/src/card/words.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { card } from '../../server/src/project/card.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { starterFeed } from '../jobs/starter-feed.ts';

/* A drop that is measured while nothing draws its current is near zero, and blames nobody. */

function detailsOf(text: string): readonly string[] {
  const made = finish(
    card(analyse(snapshotOf([{ id: 'a', text }]), 'a'), {
      date: '1 March 2026',
      version: '0.0.0',
      draft: true,
    }),
  );
  if ('refused' in made) throw new Error('refused');
  return made.card.steps.sections
    .flatMap(({ steps }) => steps)
    .filter(({ action }) => plainWords(action).startsWith('Measure'))
    .map(({ details }) => details.map(plainWords).join(' '));
}

const said = 'starter must draw its current while you measure: have it switched on.';

test('each reading that names what draws says to have it switched on', () => {
  const details = detailsOf(starterFeed.text);
  expect(details.length).toBeGreaterThan(3);
  for (const one of details) expect(one).toContain(said);
});

test('a reading that names nothing does not', () => {
  const [first = ''] = detailsOf(starterFeed.text.replace('    drawing: starter\n', ''));
  expect(first).not.toContain('must draw');
});
