import { expect, test } from 'vitest';
import { finish } from '../../server/src/bench/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { nothingFlows } from '../../server/src/rules/nothing-flows.ts';

/* A lamp on a wire of its own, its plug K50 open: plus, lamp-feed | lamp-plus, ground. */

function told(probes: string): readonly string[] {
  const text = nothingFlows.examples.triggers.text.replace('across: [plus, lamp-feed]', `across: ${probes}`);
  const id = 'example.procedure.yaml';
  const findings = finish(analyse(snapshotOf([{ id, text }]), id).findings('order'));
  return findings.flatMap(({ rule }) => (rule === 'nothing-flows' ? [rule] : []));
}

test('a drop across the wire that the lamp should draw current through', () => {
  expect(told('[plus, lamp-feed]')).toEqual(['nothing-flows']);
});

test('not that the lamp is dead behind the open plug, which ground alone connects with the battery', () => {
  expect(told('[lamp-plus, ground]')).toEqual([]);
});

test('not between the two sides of the open plug, where nothing lies', () => {
  expect(told('[lamp-feed, lamp-plus]')).toEqual([]);
});
