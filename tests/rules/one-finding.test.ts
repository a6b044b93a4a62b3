import { describe, expect, test } from 'vitest';
import { rules } from '../../server/src/rules/rules.ts';
import { analysed } from '../readings/analysed.ts';

const circuit = rules[0]?.examples.passes.text.split('\nsteps:\n')[0] ?? '';

/** Ten outcomes of five readings lead to the one step that is not safe, and so does the way past all of them. */
const many = `${circuit}
steps:
  - ignition: on
  - read-codes: control-unit
${[1, 2, 3, 4, 5]
  .map(
    (number) => `  - read: driver-loop
    outcomes: { within: touch, below: touch, else: next }
  - do: Look, for the ${number} time.
`,
  )
  .join('')}  - unplug: K30
    id: touch
  - stop: Hand over.
    leaves: [K30, repair, codes]
`;

describe('one defect that is met on ten paths', () => {
  const { findings, procedure } = analysed(many);
  const touches = findings.filter(({ rule }) => rule === 'live-touch');

  test('is reached by more than ten', () => {
    const target = procedure.steps.findIndex(({ id }) => id === 'touch');
    const jumps = procedure.steps.flatMap((step) =>
      step.verb === 'read' ? (step.outcomes ?? []).filter((outcome) => outcome.target === target) : [],
    );
    expect(jumps).toHaveLength(10);
  });

  test('is one finding, with the shortest of them', () => {
    expect(touches).toHaveLength(1);
    expect(touches[0]?.trace?.hops.map(({ step }) => step.number)).toEqual([1, 2, 3, 13]);
    expect(new Set(findings.map(({ key }) => key)).size).toBe(findings.length);
  });

  test('says the same in its message whichever path it is met on', () => {
    const only = analysed(many.replaceAll('within: touch, below: touch, else: next', 'else: touch'));
    expect(only.findings.find(({ rule }) => rule === 'live-touch')?.message).toBe(touches[0]?.message);
  });
});
