import type { Circuit } from '../bench/circuits.ts';
import { connectorsOf } from '../bench/circuits.ts';
import type { Watcher } from '../bench/explore.ts';
import { hardwareAfter, hardwareAtStart, hardwareKey } from '../bench/hardware.ts';
import type { Cone, Hardware } from '../bench/hardware.ts';
import { powerAfter, powerAtStart, powerKey, powerReturns } from '../bench/power.ts';
import type { Power } from '../bench/power.ts';
import { running } from '../bench/run.ts';
import type { Run } from '../bench/run.ts';
import type { Id } from '../text/procedure.ts';
import type { Finder } from './rule.ts';
import { listed } from './words.ts';

/*
 * Power that returns to a live circuit with a connector not mated or a load fitted. Each connector is watched alone
 * (with the loads on it): the circuit is half open as soon as one of them is.
 */

export const halfOpenFinder: Finder = {
  watch: (context) => context.circuits.live.flatMap(watchCircuit),
};

interface State {
  readonly power: Power;
  readonly hardware: Hardware;
}

function watchCircuit(circuit: Circuit): readonly Run[] {
  if (circuit.sources.length === 0) return [];
  return connectorsOf(circuit.loop).map((connector) => running(watchConnector(circuit, connector)));
}

function watchConnector(circuit: Circuit, connector: Id): Watcher<State> {
  const cone: Cone = { connectors: new Set([connector]) };
  return {
    watches: `the power of ${circuit.loop.id} and what is done at ${connector}`,
    start: { power: powerAtStart, hardware: hardwareAtStart },
    key: (state) => `${powerKey(state.power)}/${hardwareKey(state.hardware)}`,
    step: (state, step, report) => {
      const power = powerAfter(state.power, step, circuit.sources);
      const hardware = hardwareAfter(state.hardware, step, cone);
      const warned = step.warning !== undefined || step.danger !== undefined;
      const open = openings(circuit, connector, state.hardware);
      const returning = circuit.sources.filter((source) =>
        powerReturns(state.power, step, source, circuit.sources),
      );
      if (!warned && open.length > 0 && returning.length > 0)
        report({
          rule: 'half-open',
          subject: circuit.loop.id,
          message:
            `Power comes back to the loop of ${listed(circuit.liveParts)} (${circuit.loop.id}) while ${listed(open)}: ` +
            'add a `warning` to this step that says who must stay clear.',
        });
      return power === state.power && hardware === state.hardware ? state : { power, hardware };
    },
  };
}

/** What stands open or loaded at one connector of a circuit, in words. */
function openings(circuit: Circuit, connector: Id, hardware: Hardware): readonly string[] {
  const state = hardware.connectors.get(connector);
  const loads = [...hardware.loads]
    .filter(([, place]) => place.loop === circuit.loop.id)
    .map(([load]) => load);
  return [
    ...(state === undefined ? [] : [`${connector} is ${state}`]),
    ...loads.map((load) => `${load} is fitted at ${connector}`),
  ];
}
