import type { EndJudge, Report } from '../bench/explore.ts';
import type { Ending } from '../bench/graph.ts';
import { placeInWords } from '../bench/hardware.ts';
import { isolatedBy } from '../bench/hazards.ts';
import type { Hazard } from '../bench/hazards.ts';
import type { PoweredConnector, PoweredLoad } from '../bench/items.ts';
import { isOff } from '../bench/power.ts';
import { running } from '../bench/run.ts';
import type { Id, Step } from '../text/procedure.ts';
import type { Context, Finder } from './rule.ts';
import { listed } from './words.ts';

/* What a path leaves behind where it ends: sources taken away, connectors not mated, loads fitted. */

export const leftBehindFinder: Finder = {
  watch: (context) => {
    const { procedure, watchers } = context;
    return [
      ...[...procedure.sources.keys()].map((id) => running(watchers.source(id), judgeSource(id))),
      ...[...procedure.connectors.keys()].map((id) =>
        running(watchers.connector(id), judgeConnector(context, id)),
      ),
      ...[...procedure.loads.keys()].map((id) => running(watchers.load(id), judgeLoad(context, id))),
    ];
  },
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

function judgeSource(id: Id): EndJudge<boolean> {
  return (connected, step, ending, report) => {
    if (!connected) leave(step, ending, id, `${id} disconnected`, report);
  };
}

function judgeConnector({ procedure, circuits }: Context, id: Id): EndJudge<PoweredConnector> {
  const hazards = circuits.hazards.filter(({ connectors }) => connectors.includes(id));
  const isolates = isolatedBy(procedure, id) !== null;
  return ({ power, hardware }, step, ending, report) => {
    const state = hardware.connectors.get(id);
    if (state === undefined) return;
    const powered = hazards.filter((hazard) => hazard.sources.some((source) => !isOff(power, source)));
    if (powered.length > 0) leaveLive(id, `${id} ${state}`, powered, report);
    // Of a connector that takes a source away the source itself is told.
    else if (!isolates) leave(step, ending, id, `${id} ${state}`, report);
  };
}

function judgeLoad({ circuits }: Context, id: Id): EndJudge<PoweredLoad> {
  return ({ power, at }, step, ending, report) => {
    if (at === null) return;
    const left = `${id} fitted at ${placeInWords(at)}`;
    const powered = circuits.hazards.filter(
      ({ holds, sources }) => holds(at) && sources.some((source) => !isOff(power, source)),
    );
    if (powered.length > 0) leaveLive(id, left, powered, report);
    else leave(step, ending, id, left, report);
  };
}
