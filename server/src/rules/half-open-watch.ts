import type { Watcher } from '../bench/explore.ts';
import { hardwareAfter, hardwareAtStart, hardwareKey } from '../bench/hardware.ts';
import type { Cone, Hardware } from '../bench/hardware.ts';
import type { Hazard } from '../bench/hazards.ts';
import { powerAfter, powerAtStart, powerKey, returning } from '../bench/power.ts';
import type { Power } from '../bench/power.ts';
import { running } from '../bench/run.ts';
import type { Run } from '../bench/run.ts';
import type { Id } from '../text/procedure.ts';
import type { Finder } from './rule.ts';
import { listed } from './words.ts';

/*
 * Power that returns to a live circuit, or to what carries a source, with a connector not mated or a load fitted. Each
 * connector is watched alone (with the loads on it): the circuit is half open as soon as one of them is.
 */

export const halfOpenFinder: Finder = {
  watch: (context) => context.circuits.hazards.flatMap(watchHazard),
};

interface State {
  readonly power: Power;
  readonly hardware: Hardware;
}

function watchHazard(hazard: Hazard): readonly Run[] {
  if (hazard.sources.length === 0) return [];
  return hazard.connectors.map((connector) => running(watchConnector(hazard, connector)));
}

function watchConnector(hazard: Hazard, connector: Id): Watcher<State> {
  const cone: Cone = { connectors: new Set([connector]) };
  return {
    watches: `the power of ${hazard.id} and what is done at ${connector}`,
    start: { power: powerAtStart, hardware: hardwareAtStart },
    key: (state) => `${powerKey(state.power)}/${hardwareKey(state.hardware)}`,
    step: (state, step, report) => {
      const power = powerAfter(state.power, step, hazard.sources);
      const hardware = hardwareAfter(state.hardware, step, cone);
      const warned = step.warning !== undefined || step.danger !== undefined;
      const open = openings(hazard, connector, hardware);
      if (!warned && open.length > 0 && returning(state.power, step, hazard.sources).length > 0)
        report({
          rule: 'half-open',
          subject: hazard.id,
          message:
            `Power comes back to ${hazardInWords(hazard)} while ${listed(open)}: ` +
            'add a `warning` to this step that says who must stay clear.',
        });
      return power === state.power && hardware === state.hardware ? state : { power, hardware };
    },
  };
}

function hazardInWords({ id, isLoop, live }: Hazard): string {
  if (isLoop) return `the loop of ${listed(live)} (${id})`;
  return live.includes(id) ? `what carries ${id}` : `the circuit of ${listed(live)}`;
}

/** What stands open or loaded at one connector, in words. */
function openings({ holds }: Hazard, connector: Id, hardware: Hardware): readonly string[] {
  const state = hardware.connectors.get(connector);
  const loads = [...hardware.loads].filter(([, place]) => holds(place)).map(([load]) => load);
  return [
    ...(state === undefined ? [] : [`${connector} is ${state}`]),
    ...loads.map((load) => `${load} is fitted at ${connector}`),
  ];
}
