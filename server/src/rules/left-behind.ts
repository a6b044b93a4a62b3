import type { Report, Watcher } from '../bench/explore.ts';
import type { Ending } from '../bench/graph.ts';
import { hardwareAfter, hardwareAtStart, hardwareKey, placeInWords, placeKey } from '../bench/hardware.ts';
import type { Hardware } from '../bench/hardware.ts';
import { isolatedBy } from '../bench/hazards.ts';
import type { Hazard } from '../bench/hazards.ts';
import { placeAfter, sourceItem } from '../bench/items.ts';
import { isOff, powerAfter, powerAtStart, powerKey } from '../bench/power.ts';
import type { Power } from '../bench/power.ts';
import { running } from '../bench/run.ts';
import type { Id, Place, Step } from '../text/procedure.ts';
import type { Context, Finder } from './rule.ts';
import { listed } from './words.ts';

/* What a path leaves behind where it ends: sources taken away, connectors not mated, loads fitted. */

export const leftBehindFinder: Finder = {
  watch: (context) => [
    ...[...context.procedure.sources.keys()].map((id) => running(sourceWatcher(id))),
    ...[...context.procedure.connectors.keys()].map((id) => running(connectorWatcher(context, id))),
    ...[...context.procedure.loads.keys()].map((id) => running(loadWatcher(context, id))),
  ],
};

/** Reports what is left at an end, unless a `stop` says that it may stay. Nobody restores what was found live. */
function leave(step: Step, ending: Ending, subject: Id, left: string, report: Report): void {
  if (ending === 'finished')
    report({
      rule: 'not-restored',
      subject,
      message: `The procedure ends here with ${left}: restore it before.`,
    });
  else if (step.verb === 'stop' && !step.leaves.includes(subject))
    report({
      rule: 'not-restored',
      severity: 'warning',
      subject,
      message: `This stop leaves ${left}: restore it before, or name it in \`leaves\` so that the card says so.`,
    });
}

/** A live circuit that is open or loaded under power is an error at any end, named in `leaves` or not. */
function leaveLive(subject: Id, left: string, hazards: readonly Hazard[], report: Report): void {
  const stages = listed([...new Set(hazards.flatMap(({ live }) => live))]);
  report({
    rule: 'not-restored',
    subject,
    message: `The procedure ends here with ${left} and power on ${stages}: take the source away first.`,
  });
}

function sourceWatcher(id: Id): Watcher<boolean> {
  return {
    ...sourceItem(id),
    end: (connected, step, ending, report) => {
      if (!connected) leave(step, ending, id, `${id} disconnected`, report);
    },
  };
}

interface PoweredHardware {
  readonly power: Power;
  readonly hardware: Hardware;
}

function connectorWatcher(context: Context, id: Id): Watcher<PoweredHardware> {
  const hazards = context.circuits.hazards.filter(({ connectors }) => connectors.includes(id));
  const sources = [...new Set(hazards.flatMap((hazard) => hazard.sources))];
  const isolates = isolatedBy(context.procedure, id) !== null;
  const cone = { connectors: new Set([id]) };
  return {
    watches: `${id} and the power of its circuits`,
    start: { power: powerAtStart, hardware: hardwareAtStart },
    key: ({ power, hardware }) => `${powerKey(power)}/${hardwareKey({ ...hardware, loads: new Map() })}`,
    step: (state, step) => {
      const power = powerAfter(state.power, step, sources);
      const hardware = hardwareAfter(state.hardware, step, cone);
      return power === state.power && hardware === state.hardware ? state : { power, hardware };
    },
    end: ({ power, hardware }, step, ending, report) => {
      const state = hardware.connectors.get(id);
      if (state === undefined) return;
      const powered = hazards.filter((hazard) => hazard.sources.some((source) => !isOff(power, source)));
      if (powered.length > 0) leaveLive(id, `${id} ${state}`, powered, report);
      // Of a connector that takes a source away the source itself is told.
      else if (!isolates) leave(step, ending, id, `${id} ${state}`, report);
    },
  };
}

interface PoweredLoad {
  readonly power: Power;
  readonly at: Place | null;
}

function loadWatcher(context: Context, id: Id): Watcher<PoweredLoad> {
  const sources = [...new Set(context.circuits.hazards.flatMap((hazard) => hazard.sources))];
  return {
    watches: `the place of ${id} and the power of the circuits`,
    start: { power: powerAtStart, at: null },
    key: ({ power, at }) => `${powerKey(power)}/${at === null ? '' : placeKey(at)}`,
    step: (state, step) => {
      const power = powerAfter(state.power, step, sources);
      const at = placeAfter(state.at, step, id);
      return power === state.power && at === state.at ? state : { power, at };
    },
    end: ({ power, at }, step, ending, report) => {
      if (at === null) return;
      const left = `${id} fitted at ${placeInWords(at)}`;
      const powered = context.circuits.hazards.filter(
        ({ loop, sources: feeding }) =>
          loop !== null && loop === at.loop && feeding.some((source) => !isOff(power, source)),
      );
      if (powered.length > 0) leaveLive(id, left, powered, report);
      else leave(step, ending, id, left, report);
    },
  };
}
