import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { applyEdits } from '../../server/src/project/edit.ts';
import { fixFor } from '../../server/src/fixes/fix.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { example, giveBackOpened, makeSafe } from '../../server/src/rules/examples.ts';
import {
  handsAndBack,
  highVoltageExample,
  proveDead,
  takeAway,
} from '../../server/src/rules/high-voltage/high-voltage-examples.ts';

/* What a missing notice is mended with: words to begin with, which the author chooses. */

function mended(text: string, rule: string) {
  const analysis = analyse(snapshotOf([{ id: 'draft', text }]), 'draft');
  const all = finish(analysis.findings('order'));
  const finding = all.find((one) => one.rule === rule);
  const fix = finding === undefined ? null : finish(fixFor(analysis, finding));
  if (fix === null) throw new Error(`nothing is mended: ${all.map(({ key }) => key).join(' ')}`);
  const after = applyEdits(text, fix.edits);
  return {
    ...fix,
    after,
    left: finish(analyse(snapshotOf([{ id: 'draft', text: after }]), 'draft').findings('order')),
  };
}

const whole = `${takeAway}- wait: 5 min\n${proveDead}${handsAndBack}`;

describe('a missing notice', () => {
  test('at a live stage gets a warning, as a choice', () => {
    const { text } = example('', `${makeSafe}- unplug: K30\n- plug: K30\n${giveBackOpened}`);
    const { after, left, isPreferred, title } = mended(text, 'missing-notice');
    expect(title).toMatch(/^Add a warning to step \d+$/);
    expect(after).toMatch(/- unplug: K30\n {4}warning: Touch bare metal first/);
    expect(left).toEqual([]);
    expect(isPreferred).toBe(false);
  });

  test.each([
    ['taken away', 'disconnect'],
    ['given back', 'reconnect'],
  ])('where high voltage is %s gets a danger that defers to the maker', (_, verb) => {
    const bare = whole.replace(new RegExp(`(- ${verb}: traction\\n).*danger.*\\n`), '$1');
    expect(bare).not.toBe(whole);
    const { after, left, isPreferred } = mended(highVoltageExample('', bare).text, 'missing-notice');
    expect(after).toMatch(
      new RegExp(`- ${verb}: traction\\n {4}danger: High voltage .*the maker's service information`),
    );
    expect(left).toEqual([]);
    expect(isPreferred).toBe(false);
  });

  // ANSI Z535.6 (from memory): only WARNING and DANGER are about death and serious injury.
  test.each(['notice', 'caution'])('is not made good by a %s', (word) => {
    const { text } = example(
      '',
      `${makeSafe}- unplug: K30\n  ${word}: Stay clear.\n- plug: K30\n${giveBackOpened}`,
    );
    const { after, left } = mended(text, 'missing-notice');
    expect(after).toContain(`${word}: Stay clear.`);
    expect(left).toEqual([]);
  });

  test('gets the graver word beside one that is not enough', () => {
    const { text } = highVoltageExample(
      '',
      whole.replace(/(- reconnect: traction\n {2})danger/, '$1warning'),
    );
    const { after, left } = mended(text, 'missing-notice');
    expect(after).toMatch(/- reconnect: traction\n {4}warning: .*\n {4}danger: /);
    expect(left).toEqual([]);
  });
});

test('a load beside high voltage gets a danger that says what it does to the interlock', () => {
  const steps = `${takeAway}- wait: 5 min\n${proveDead}- unplug: K7\n- fit: load-plug\n  at: K7.monitor\n- stop: Hand over.\n  leaves: [traction, K7, load-plug, repair, codes]\n`;
  const loads = 'loads:\n  load-plug: { kind: resistor, resistance: 120 Ω ± 1 % }\n';
  const { after, isPreferred } = mended(highVoltageExample('', steps, { loads }).text, 'missing-notice');
  expect(after).toMatch(
    /- fit: load-plug\n {4}at: K7\.monitor\n {4}danger: The load closes the interlock circuit, so the interlock no longer protects you\. Keep all persons away while the ignition is on\./,
  );
  expect(isPreferred).toBe(false);
});

test('high voltage that is given back by a fix comes with its danger', () => {
  const { text } = highVoltageExample('', `${takeAway}- wait: 5 min\n${proveDead}`);
  const { after, left } = mended(text, 'not-restored');
  expect(after).toMatch(/- reconnect: traction\n {4}danger: High voltage comes back/);
  expect(left.map(({ rule }) => rule)).not.toContain('missing-notice');
});
