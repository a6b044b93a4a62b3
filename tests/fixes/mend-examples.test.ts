import { describe, expect, it } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { applyEdits } from '../../server/src/project/edit.ts';
import { fixFor } from '../../server/src/fixes/fix.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { rules } from '../../server/src/rules/rules.ts';
import type { Finding } from '../../server/src/model/finding.ts';

/** Why a rule has no fix: what its findings need only the author knows. */
const without: Readonly<Record<string, string>> = {
  'unfed-circuit': 'the file does not say what feeds the circuit',
  'unfed-monitor': 'the file does not say what feeds the monitor',
  'no-wait': 'the wait is for the maker of the system to state, never for a program to invent',
  'unguarded-source': 'the file does not say what the source reaches',
  'proof-elsewhere': 'where a proof can be taken depends on what can be reached in the vehicle',
  'unfit-meter': 'another instrument is needed',
  'in-no-circuit': 'the file does not say which circuit it belongs to',
  unused: 'whether it belongs somewhere or is left over is for the author to say',
  'dangling-node': 'whether a name is wrong or an element is missing is for the author to say',
  'test-current': 'another instrument is needed',
  'test-current-unknown': 'the current is for the maker of the instrument or the stage to state',
  'unlikely-value': 'which value is right only the service information of the maker says',
  'bar-in-the-way': 'where it can be measured instead depends on what is looked for',
  'nothing-flows': 'what draws current there is for the author to say',
  'moved-unseen': 'what else can be watched is for the author to say',
  'load-like-a-bar': 'another load or another place is needed',
  'insulation-on-electronics': 'what bears the voltage, and where it is parted, only the author knows',
  'meter-across-live': 'where it can be measured instead depends on what is looked for',
  'moved-with-stage':
    'what stands in the place of the stage, and how the loop is read then, only the author knows',
  'monitor-in-the-way': 'where it can be measured instead depends on what is looked for',
  'example-values': 'which values and texts are right only the maker of the vehicle says',
  'inert-stage': 'it is told so that it is seen, and is no mistake',
  'zero-wait': 'it is told so that it is seen, and is no mistake',
  'hands-in-text': 'whether the words are a command is for the author to say',
  impossible: 'whether the step or one before it is wrong is for the author to say',
  unreachable: 'whether the steps or a way to them are missing is for the author to say',
  'no-difference': 'where the work goes on when something is wrong is for the author to say',
  endless: 'where the procedure is to end is for the author to say',
  repeats: 'what is to change between two rounds is for the author to say',
  'load-bridged': 'another load or another place is needed',
  'load-out-of-window': 'another load, place or window is needed',
  'window-differs': 'which of the benches was meant is for the author to say',
  'window-undefined': 'which of the benches was meant is for the author to say',
  'window-needs-value': 'what a part has under power only its maker or a measurement says',
  'expect-excludes-good': 'the stated window or the circuit may be wrong',
  'expect-admits-fault': 'the stated window or the circuit may be wrong',
  'meter-too-coarse': 'another instrument is needed',
  'waiver-refused': 'what the waiver was to hide has to be mended',
  'not-preferred': 'two values of the series are near, and only one is fitted',
  'outside-validity': 'the range of the temperature or the part is wrong',
  'too-many-states': 'the procedure has to be made smaller',
};

function findingsOf(text: string): readonly Finding[] {
  return finish(analyse(snapshotOf([{ id: 'file', text }]), 'file').findings('order'));
}

describe.each(rules.map((rule) => ({ name: rule.name, text: rule.examples.triggers.text })))(
  'the example that triggers $name',
  ({ name, text }) => {
    const analysis = analyse(snapshotOf([{ id: 'file', text }]), 'file');
    const found = findingsOf(text).filter(({ rule }) => rule === name);
    const fixes = found.map((finding) => finish(fixFor(analysis, finding)));

    it(without[name] === undefined ? 'is mended' : `has no fix: ${without[name]}`, () => {
      const offered = fixes.filter((fix) => fix !== null);
      expect(offered.length).toBe(without[name] === undefined ? found.length : 0);
      for (const fix of offered) {
        const after = findingsOf(applyEdits(text, fix.edits));
        // Each of these examples has findings of one rule only.
        expect(after.length, `${fix.title}: ${after.map(({ message }) => message).join(' ')}`).toBeLessThan(
          found.length,
        );
        expect(after.filter(({ rule }) => rule !== name)).toEqual([]);
      }
    });
  },
);
