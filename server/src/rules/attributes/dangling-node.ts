import { askedBy } from '../../bench/asked.ts';
import { nodeOf, sameNodes } from '../../bench/same-nodes.ts';
import { namedNodes } from '../../text/read-network.ts';
import { grouped } from '../../model/remembered.ts';
import { guesser } from '../../text/guess.ts';
import { example, readOnly } from '../examples.ts';
import type { Context, Rule, Seen } from '../rule.ts';

export const danglingNode: Rule = {
  name: 'dangling-node',
  severity: 'warning',
  stage: 'windows',
  meaning: 'A node of the network at which one element ends, and where nothing is measured.',
  why: 'A name that is written in two ways looks so: the circuit is then open there, and every reading of it is computed for another circuit.',
  source: 'a guard of this program',
  finder: { check: dangling },
  examples: {
    triggers: example('feed and fed', readOnly, pump('fed')),
    passes: example('the same name at both elements', readOnly, pump('feed')),
  },
};

function pump(node: string): { readonly parts: string; readonly network: string } {
  return {
    parts: `parts:
  coil-coupling: { kind: rotary-coupling, resistance: 0.05..0.15 Ω }
  stage-1: { kind: initiator, resistance: 1.7..2.3 Ω, no-fire: 400 mA, live: true }
  pump-wire: { kind: cable, resistance: 20..30 mΩ }
  pump: { kind: heater, resistance: 2..3 Ω }
`,
    network: `network:
  - { source: battery, between: [plus, ground] }
  - { part: pump-wire, between: [plus, feed] }
  - { part: pump, between: [${node}, ground] }
`,
  };
}

function dangling({ procedure }: Context): readonly Seen[] {
  const { network, steps } = procedure;
  if (!network.complete) return [];
  const same = sameNodes(procedure);
  const probed = new Set(
    steps.flatMap((step) => {
      const asked = askedBy(step);
      // A clamp goes around a part, and to no point.
      const isProbed = asked?.of === 'points' && asked.step.carrying?.kind !== 'clamp';
      return isProbed ? asked.step.across.map((probe) => same(nodeOf(probe))) : [];
    }),
  );
  const ends = network.elements.flatMap(({ path, between }) =>
    between.map((node, index) => ({ node, path: [...path, 'between', index] })),
  );
  const nodes = namedNodes(network);
  const endsAt = grouped(ends.map((end) => [same(end.node), end] as const));
  const guess = guesser();
  return ends
    .filter(({ node }) => nodes.has(node) && node !== 'ground' && !probed.has(same(node)))
    .filter(({ node }) => endsAt.get(same(node))?.length === 1)
    .map(({ node, path }): Seen => {
      return {
        issue: {
          rule: 'dangling-node',
          subject: node,
          place: { path, part: 'value' },
          message:
            `Only one element ends at ${node}, and nothing is measured there: the circuit is open here.` +
            guess(node, () => [...nodes].filter((other) => other !== node)).sentence,
        },
      };
    });
}
