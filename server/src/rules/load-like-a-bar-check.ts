import { changesTo } from '../bench/changes.ts';
import { resistanceWithin } from '../circuit/circuit.ts';
import { formatSpan } from '../quantity/quantity.ts';
import { conditionsOf } from '../readings/conditions.ts';
import type { Context, Finder, Seen } from './rule.ts';

/* Loads that look like the closed shorting bar of the connector on which they are fitted. */

export const loadLikeABarFinder: Finder = { check: loadsLikeBars };

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
