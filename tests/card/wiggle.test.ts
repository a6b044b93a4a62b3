import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { cardHtml } from '../../server/src/card/html.ts';
import type { CardModel, CardStep } from '../../server/src/card/model.ts';
import { plainWords } from '../../server/src/card/words.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { card } from '../../server/src/project/card.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { intermittentSensor } from '../jobs/intermittent-sensor.ts';
import { movedWithStage } from '../../server/src/rules/power/moved-with-stage.ts';

/* What the card says where something is moved by hand. */

function cardOf(text: string): CardModel {
  const analysis = analyse(snapshotOf([{ id: 'a', text }]), 'a');
  const made = finish(card(analysis, { date: '1 March 2026', version: '0.0.0', draft: true }));
  if ('refused' in made) throw new Error(made.refused.map(({ message }) => message).join('\n'));
  return made.card;
}

const isMoved = ({ action }: CardStep): boolean => plainWords(action).startsWith('Wiggle');

function moved(text: string): CardStep {
  const found = cardOf(text)
    .steps.sections.flatMap(({ steps }) => steps)
    .find(isMoved);
  if (found === undefined) throw new Error('nothing is moved');
  return found;
}

const { text: airbag } = movedWithStage.examples.passes;

/** The step of the example with these keys beside the loop that is watched. */
const watching = (keys: string): CardStep =>
  moved(airbag.replace('    watch: driver-loop\n', `    watch: driver-loop\n${keys}`));

const ways = ({ outcomes }: CardStep): readonly string[] =>
  (outcomes?.rows ?? []).map(({ when }) => plainWords(when));

describe('the sentence', () => {
  test('says what is moved, how long, and what is watched', () => {
    expect(plainWords(moved(airbag).action)).toBe(
      'Wiggle coil-coupling by hand for 30 s. Meanwhile read driver-loop on control-unit.',
    );
    const several = moved(
      airbag.replace('wiggle: coil-coupling', 'wiggle: [coil-coupling, K10, K30.monitor]'),
    );
    expect(plainWords(several.action)).toBe(
      'Wiggle coil-coupling, connector K10 and connector K30, monitor side, by hand for 30 s in all, one after the other. Meanwhile read driver-loop on control-unit.',
    );
  });

  test('says where the probes go, and what has to be so before', () => {
    const step = moved(
      intermittentSensor.text.replace('id: under-power\n    quantity: voltage', 'quantity: voltage'),
    );
    expect(plainWords(step.action)).toBe(
      'Wiggle signal-wire, return-wire and connector K9 by hand for 2 min in all, one after the other. Meanwhile measure the DC voltage with hand-meter: red probe on point signal, black probe on ground.',
    );
    expect(step.details.map(plainWords).join(' ')).toContain('fingers behind the guards');
  });
});

test('what is written down is the least and the most', () => {
  expect(moved(airbag).windows.map(({ blanks }) => blanks)).toEqual([['Least', 'Most']]);
  const html = cardHtml(cardOf(airbag));
  expect(html).toContain('<td class="blank labelled">');
  expect(html.match(/>Least</g)).toHaveLength(1);
  // A reading by itself has one number.
  const single = cardOf(airbag)
    .steps.sections.flatMap(({ steps }) => steps)
    .filter((step) => step.windows.length > 0 && !isMoved(step));
  expect(single.flatMap(({ windows }) => windows.flatMap(({ blanks }) => blanks))).toEqual([]);
});

describe('the outcomes', () => {
  const decided = watching(
    '    windows: { double: 5..6 Ω }\n    outcomes: { within: next, above: next, double: next, below: next, open: next, else: next }\n',
  );

  test('are read from the top, and what is seen at any time comes first', () => {
    expect(decided.outcomes?.introduction).toBe('Take the first line that is true, from the top:');
    expect(ways(decided)).toEqual([
      'Reads open (no number) at any time',
      'Shows 5..6 Ω (double) the whole time',
      'Shows less than 2.76 Ω at any time',
      'Shows more than 3.69 Ω at any time',
      'Shows 2.76..3.69 Ω the whole time',
      'Anything else',
    ]);
  });

  test('`else` and `outside` are what is left over', () => {
    expect(ways(watching('    outcomes: { within: next, else: next }\n'))).toEqual([
      'Shows 2.76..3.69 Ω the whole time',
      'Anything else (less; more; open)',
    ]);
  });
});
