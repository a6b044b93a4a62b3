import { describe, expect, test } from 'vitest';
import { explore } from '../../server/src/paths/explore.ts';
import type { Watcher } from '../../server/src/paths/explore.ts';
import { stepGraph } from '../../server/src/paths/graph.ts';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { analysed } from '../readings/analysed.ts';
import { rules } from '../../server/src/rules/rules.ts';

/** A file with these steps on the circuit of the rules' examples. */
function withSteps(steps: string): string {
  const [head = ''] = (rules[0]?.examples.passes.text ?? '').split(/^steps:\n/m);
  return `${head}steps:\n${steps}`;
}

/** Counts the inspections on the way: as many states as there are branches. */
const counter: Watcher<number> = {
  watches: 'the count',
  start: 0,
  key: String,
  step: (count) => count,
  take: (count, _, edge) => (edge.outcome?.name === 'ok' ? count + 1 : count),
};

const branching = withSteps(
  Array.from(
    { length: 5 },
    (_, at) => `  - inspect: Look ${at}.\n    outcomes: { ok: next, defect: next }\n`,
  ).join(''),
);

describe('the explorer', () => {
  const graph = stepGraph(analysed(branching).procedure);

  test('reaches every state of every step', () => {
    const { arrivals, complete, reported } = finish(explore(graph, counter));
    expect(
      graph.steps.map((_, at) =>
        arrivals(at)
          .map(({ state }) => state)
          .sort(),
      ),
    ).toEqual([[0], [0, 1], [0, 1, 2], [0, 1, 2, 3], [0, 1, 2, 3, 4]]);
    expect([complete, reported]).toEqual([true, []]);
  });

  test('says so where a step has too many states, and names what varies', () => {
    const { complete, reported } = finish(
      explore(graph, counter, { statesPerStep: 3, configurations: 1000, work: Infinity }),
    );
    expect(complete).toBe(false);
    expect(reported.map(({ issue, index }) => [issue.rule, issue.subject, index])).toEqual([
      ['too-many-states', 'the count', 3],
    ]);
  });

  test('says so where there are too many configurations in all', () => {
    const { complete, reported } = finish(
      explore(graph, counter, { statesPerStep: 64, configurations: 4, work: Infinity }),
    );
    expect(complete).toBe(false);
    expect(reported).toHaveLength(1);
    expect(reported[0]?.issue.message).toContain('4 in all');
  });

  test('a state that another one covers is not followed', () => {
    const covering: Watcher<number> = { ...counter, covers: (seen, state) => seen >= state };
    const { arrivals } = finish(explore(graph, covering));
    expect(graph.steps.map((_, at) => arrivals(at).length)).toEqual([1, 1, 1, 1, 1]);
  });
});

describe('a bound that is met', () => {
  test('is an error of the check, which then is not complete', () => {
    const text = rules.find(({ name }) => name === 'impossible')?.examples.passes.text ?? '';
    const analysis = analyse(snapshotOf([{ id: 'a', text }]), 'a', {
      statesPerStep: 64,
      configurations: 3,
      work: Infinity,
    });
    expect(finish(analysis.order()).complete).toBe(false);
    const findings = finish(analysis.findings('order'));
    expect(findings.some(({ rule, severity }) => rule === 'too-many-states' && severity === 'error')).toBe(
      true,
    );
  });
});

describe('a step that cannot be read', () => {
  const broken = withSteps('  - ignition: on\n  - unplug: K99\n  - unplug: K30\n  - read: driver-loop\n');

  test('holds back what lies behind it, and only its own error stands', () => {
    expect(analysed(broken).findings.map(({ rule }) => rule)).toEqual(['unknown-id']);
  });

  test('does not hold back what another path shows', () => {
    const around = withSteps(
      '  - inspect: Which way?\n    outcomes: { ok: hands, defect: next }\n' +
        '  - unplug: K99\n  - unplug: K30\n    id: hands\n',
    );
    const rulesFound = analysed(around).findings.map(({ rule, trace }) => [rule, trace?.hops.length]);
    expect(rulesFound).toContainEqual(['live-touch', 2]);
  });
});

describe('work', () => {
  test('that is abandoned half way leaves no trace', () => {
    const text = branching;
    const analysis = analyse(snapshotOf([{ id: 'b', text }]), 'b');
    analysis.order().next();
    const fresh = analyse(snapshotOf([{ id: 'b', text }]), 'b');
    expect(finish(analysis.findings('order'))).toEqual(finish(fresh.findings('order')));
  });

  test('is computed once for a question asked twice', () => {
    const snapshot = snapshotOf([{ id: 'c', text: branching }]);
    expect(analyse(snapshot, 'c')).toBe(analyse(snapshot, 'c'));
    const analysis = analyse(snapshot, 'c');
    expect(finish(analysis.order())).toBe(finish(analysis.order()));
  });
});
