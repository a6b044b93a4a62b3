import { changesTo } from '../../bench/changes.ts';
import { resistanceWithin } from '../../circuit/circuit.ts';
import { formatSpan } from '../../quantity/quantity.ts';
import { conditionsOf } from '../../readings/conditions.ts';
import { circuit, example, giveBackOpened, makeSafe } from '../examples.ts';
import type { Context, Rule, Seen } from '../rule.ts';

/* Loads that look like the closed shorting bar of the connector on which they are fitted. */

const fitted = `${makeSafe}- unplug: K30
  warning: Stay clear of the front of the airbag.
- fit: bench-lamp
  at: K30.monitor
- remove: bench-lamp
- plug: K30
${giveBackOpened}`;

export const loadLikeABar: Rule = {
  name: 'load-like-a-bar',
  severity: 'warning',
  stage: 'order',
  meaning: 'A load is fitted whose resistance can be that of the closed shorting bar of this connector.',
  why: 'A reading then cannot tell whether the load is seen or the bar, which stays closed where it should have opened.',
  source: 'common practice, no source',
  finder: { check: loadsLikeBars },
  examples: {
    triggers: example('0.4 Ω, and a bar of 0.2 to 0.4 Ω', fitted, {
      loads: circuit.loads.replace('3.0 Ω ± 5 %', '0.4 Ω ± 5 %'),
    }),
    passes: example('3 Ω', fitted),
  },
};

function loadsLikeBars({ procedure, graph }: Context): readonly Seen[] {
  return graph.steps.flatMap((step, index) =>
    changesTo('load', step).flatMap(({ id, at, named }): readonly Seen[] => {
      const bar =
        at === null ? null : (procedure.connectors.get(at.connector)?.shortingBar?.resistance ?? null);
      const resistance = procedure.loads.get(id)?.resistance ?? null;
      if (at === null || bar === null || resistance === null) return [];
      const load = resistanceWithin(resistance, conditionsOf(procedure));
      if (load.least > bar.most || load.most < bar.least) return [];
      const message =
        `${id} has ${formatSpan(load, 'resistance')}, and the closed shorting bar of ${at.connector} ${formatSpan(bar, 'resistance')}: ` +
        'a reading cannot tell them apart. Take a load whose resistance the bar cannot have.';
      return [{ index, issue: { rule: 'load-like-a-bar', subject: id, underline: named, message } }];
    }),
  );
}
