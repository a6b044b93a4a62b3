import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import type { CardModel } from '../../server/src/card/model.ts';
import { cardHtml } from '../../server/src/card/html.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { card } from '../../server/src/project/card.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { tooManyStates } from '../../server/src/rules/flow/too-many-states.ts';
import { buildCardOf } from '../readings/card-of.ts';
import { analysed } from '../readings/analysed.ts';
import { bent, coils } from '../readings/outer-bound.ts';

/* What the check could not settle stands on the card: windows that are wider than need be, and a check that met a limit. */

const remarksOf = ({ steps }: CardModel): readonly string[] =>
  steps.sections.flatMap((section) =>
    section.steps.flatMap(({ windows }) => windows.map(({ remark }) => remark ?? '')),
  );

describe('an outer bound', () => {
  const { model, html } = buildCardOf(coils);

  test('is said at its window and at no other', () => {
    expect(analysed(coils).readings.readings.map(({ exact }) => exact)).toEqual([false, true]);
    expect(remarksOf(model).map((remark) => remark.includes('an outer bound'))).toEqual([true, false]);
  });

  test('is printed, with what it means', () => {
    expect(html).toContain('computed from the parts, an outer bound');
    expect(html).toContain('no sound circuit reads outside of it');
  });

  test('of a resistance is said like that of a voltage', () => {
    const { model: ofOhms, html: page } = buildCardOf(bent);
    expect(remarksOf(ofOhms).map((remark) => remark.includes('an outer bound'))).toEqual([true, false]);
    expect(page).toContain('no sound circuit reads outside of it');
  });

  test('is not said of a window that the author states', () => {
    const stated = coils.replace('    with: hand-meter\n', '    with: hand-meter\n    expect: 5..7 V\n');
    expect(buildCardOf(stated).html).not.toContain('outer bound');
  });
});

describe('a check that met a limit', () => {
  const { text } = tooManyStates.examples.triggers;
  const analysis = analyse(snapshotOf([{ id: 'many.procedure.yaml', text }]), 'many.procedure.yaml');
  const stamp = { date: '2031-04-17', version: '0' };

  test('gives no card', () => {
    const made = finish(card(analysis, { ...stamp, draft: false }));
    expect('refused' in made && made.refused.map(({ rule }) => rule)).toContain('too-many-states');
  });

  test('says on every page of a draft that not everything was checked', () => {
    const made = finish(card(analysis, { ...stamp, draft: true }));
    if (!('card' in made)) throw new Error('a draft is never refused');
    expect(made.card.draft).toBe('DRAFT - DO NOT USE: not everything was checked');
    expect(made.card.hazard.lines.at(-1)).toContain(
      'Not everything in this procedure was checked. Do not use it on a vehicle.',
    );
    expect(made.card.remarks.introduction).toContain('not everything was checked');
    // The head of a page, and the mark across it: the one is repeated by the paper, the other by the browser.
    const html = cardHtml(made.card);
    expect(html).toMatch(
      /@top-center \{ content: "DRAFT \\2d {2}DO NOT USE\\3a {2}not everything was checked"/,
    );
    expect(html).toMatch(/<p class="draft-mark"[^>]*>DRAFT - DO NOT USE: not everything was checked</);
  });

  test('is told apart from a draft of which everything was checked', () => {
    expect(buildCardOf(tooManyStates.examples.passes.text).model.draft).toBe(
      'DRAFT - DO NOT USE: not released',
    );
  });
});
