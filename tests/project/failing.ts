import { defaultBounds } from '../../server/src/paths/explore.ts';
import type { Bounds } from '../../server/src/paths/explore.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import type { Analysis } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { example, makeSafe } from '../../server/src/rules/examples.ts';
import type { Finder, Rule } from '../../server/src/rules/rule.ts';
import { rules } from '../../server/src/rules/rules.ts';

/* Analyses in which something fails that never should: a rule, a bound, what gives the text of a parts file. */

export const file = 'a.procedure.yaml';

/** A text with a finding of each stage: a comment that swallows, a window that no sound circuit meets, hands on a live stage. */
export const text = example(
  '',
  `${makeSafe}- reconnect: battery\n- ignition: on\n- read: driver-loop\n- unplug: K30\n`,
)
  .text.replace('title: Example', 'title: Example #2')
  .replace('read: driver-loop', 'read: driver-loop\n    expect: 5..6 Ω');

export function sound(): Analysis {
  return analyse(snapshotOf([{ id: file, text }]), file);
}

/** All rules, and behind those of its stage one that fails. */
export function withFailingRule(stage: Rule['stage'], finder: Finder, of: string = text): Analysis {
  const [any] = rules;
  if (any === undefined) throw new Error('there are rules');
  const failing: Rule = { ...any, name: 'failing', stage, finder };
  return analyse(snapshotOf([{ id: file, text: of }]), file, defaultBounds, [...rules, failing]);
}

export function throwing(error: unknown): Finder {
  return {
    check: () => {
      throw error;
    },
  };
}

export function withFailingBounds(): Analysis {
  const bounds: Bounds = {
    ...defaultBounds,
    get statesPerStep(): number {
      throw new Error('no bounds');
    },
  };
  return analyse(snapshotOf([{ id: file, text }]), file, bounds);
}

/** The parts file that it uses cannot be had, for a reason that nobody has thought of. */
export function withFailingParts(of: string = text): Analysis {
  const using = of.replace('sources:', 'uses: [b.parts.yaml]\nsources:');
  const read = (): never => {
    throw new Error('no disk');
  };
  return analyse(snapshotOf([{ id: file, text: using }], { folders: [], read }), file);
}

export function overflow(): never {
  const deeper = (): number => deeper() + 1;
  throw new Error(String(deeper()));
}
