import { changesTo } from '../../bench/changes.ts';
import { connectorsOf } from '../../bench/circuits.ts';
import type { Watcher } from '../../paths/explore.ts';
import { hardwareAfter, hardwareAtStart, hardwareKey } from '../../bench/hardware.ts';
import type { Cone, Hardware } from '../../bench/hardware.ts';
import type { Hazard } from '../../bench/hazards.ts';
import { powerAfter, powerAtStart, powerKey, returning } from '../../bench/power.ts';
import type { Power } from '../../bench/power.ts';
import { running } from '../../paths/run.ts';
import type { Run } from '../../paths/run.ts';
import type { Id, Loop, Procedure, Step } from '../../model/procedure.ts';
import { isHighVoltage } from '../../model/source-kinds.ts';
import { example, giveBackOpened, makeSafe } from '../examples.ts';
import type { Rule } from '../rule.ts';
import { listed } from '../words.ts';

/*
 * Power that returns to a live circuit, or to what carries a source, with a connector not mated or a load fitted. Each
 * connector is watched alone (with the loads on it): the circuit is half open as soon as one of them is.
 */

export const halfOpen: Rule = {
  name: 'half-open',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning: 'Power returns to a live circuit that is open or has a load fitted, and the step has no warning.',
  why: 'With a connector open or a load in the place of a stage, power may return only on purpose, and while nobody is near the stage.',
  source: 'common practice',
  finder: {
    watch: ({ procedure, circuits }) => circuits.hazards.flatMap((hazard) => watchHazard(procedure, hazard)),
  },
  examples: {
    triggers: example(
      'the battery comes back with the lamp in the place of the stage',
      `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- fit: bench-lamp
  at: K30.monitor
- reconnect: battery
- ignition: on
- read: driver-loop
- ignition: off
- disconnect: battery
- wait: 3 min
- remove: bench-lamp
- plug: K30
${giveBackOpened}`,
    ),
    passes: example(
      'the same with a warning on the step',
      `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- fit: bench-lamp
  at: K30.monitor
- reconnect: battery
  warning: Nobody in front of the airbag while power comes back.
- ignition: on
- read: driver-loop
- ignition: off
- disconnect: battery
- wait: 3 min
- remove: bench-lamp
- plug: K30
${giveBackOpened}`,
    ),
  },
};

interface State {
  readonly power: Power;
  readonly hardware: Hardware;
}

function watchHazard(procedure: Procedure, hazard: Hazard): readonly Run[] {
  if (hazard.sources.length === 0) return [];
  const loaded = loadedThrough(procedure, hazard);
  const connectors = new Set([...hazard.connectors, ...loaded.flatMap(connectorsOf)]);
  return [...connectors].map((connector) => running(watchConnector(procedure, hazard, connector, loaded)));
}

/** Loops through a connector that carries the high voltage of a hazard, or isolates it. */
function loadedThrough({ sources, loops, connectors }: Procedure, { isLoop, live }: Hazard): readonly Loop[] {
  const [id = ''] = live;
  const source = sources.get(id);
  if (isLoop || !isHighVoltage(source)) return [];
  const leads = (connector: Id): boolean =>
    connector === source.isolatedBy || connectors.get(connector)?.carries.includes(id) === true;
  return [...loops.values()].filter((loop) => connectorsOf(loop).some(leads));
}

function watchConnector(
  procedure: Procedure,
  hazard: Hazard,
  connector: Id,
  loaded: readonly Loop[],
): Watcher<State> {
  const cone: Cone = { connectors: new Set([connector]) };
  return {
    watches: `the power of ${hazard.id} and what is done at ${connector}`,
    start: { power: powerAtStart, hardware: hardwareAtStart },
    key: (state) => `${powerKey(state.power)}/${hardwareKey(state.hardware)}`,
    step: (state, step, report) => {
      const power = powerAfter(state.power, step, hazard.sources);
      const hardware = hardwareAfter(state.hardware, step, cone);
      const warned = step.warning !== undefined || step.danger !== undefined;
      const open = hazard.connectors.includes(connector) ? openings(hazard, connector, hardware) : [];
      const back = highVoltageBack(procedure, hazard, step);
      const inTheWay = back.length === 0 ? [] : [...open, ...loadsIn(loaded, connector, hardware)];
      if (inTheWay.length > 0)
        report({
          rule: 'half-open',
          subject: hazard.id,
          message:
            `${listed(back)} comes back while ${listed([...new Set(inTheWay)])}: no notice makes that safe. ` +
            'Plug every connector that leads it and remove every load before this step.',
        });
      else if (!warned && open.length > 0 && returning(state.power, step, hazard.sources).length > 0)
        report({
          rule: 'half-open',
          subject: hazard.id,
          message:
            `Power returns to ${hazardInWords(hazard)} while ${listed(open)}: ` +
            'add a `warning` to this step that says who must stay clear.',
        });
      return power === state.power && hardware === state.hardware ? state : { power, hardware };
    },
  };
}

/** The high-voltage sources of a hazard that a step connects. */
function highVoltageBack({ sources }: Procedure, hazard: Hazard, step: Step): readonly Id[] {
  return changesTo('source', step).flatMap(({ id, isConnected }) =>
    isConnected && hazard.sources.includes(id) && isHighVoltage(sources.get(id)) ? [id] : [],
  );
}

function loadsIn(loops: readonly Loop[], connector: Id, { loads }: Hardware): readonly string[] {
  return [...loads].flatMap(([load, place]) =>
    loops.some(({ id }) => id === place.loop) ? [`${load} is fitted at ${connector}`] : [],
  );
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
