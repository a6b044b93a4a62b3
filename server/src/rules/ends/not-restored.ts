import type { EndJudge, Report } from '../../paths/explore.ts';
import type { Ending } from '../../paths/graph.ts';
import { placeInWords } from '../../bench/hardware.ts';
import { isolatedBy } from '../../bench/hazards.ts';
import type { Hazard } from '../../bench/hazards.ts';
import type { PoweredConnector, PoweredLoad } from '../../bench/items.ts';
import { isOff } from '../../bench/power.ts';
import { running } from '../../paths/run.ts';
import type { Id, Step } from '../../model/procedure.ts';
import { example, giveBackOpened, makeSafe } from '../examples.ts';
import type { Context, Rule } from '../rule.ts';
import { listed } from '../words.ts';

/* What a path leaves behind where it ends: sources taken away, connectors not mated, loads fitted. */

export const notRestored: Rule = {
  name: 'not-restored',
  severity: 'error',
  stage: 'order',
  // It also tells of live circuits that are left under power.
  immune: true,
  meaning: 'The procedure ends with a source off, a connector not mated or a load fitted.',
  why: 'The vehicle would go back with a restraint system that does not work, or with a stage that is live and open.',
  source: 'common practice',
  finder: {
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
  },
  examples: {
    triggers: example(
      'the battery stays off at the end',
      `${makeSafe}- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
- reconnect: battery
- ignition: on
- clear-codes: control-unit
- read: driver-loop
  outcomes: { within: off, else: faulty }
- stop: The loop is not sound. Ask the workshop lead.
  id: faulty
  leaves: [repair]
- ignition: off
  id: off
- disconnect: battery
`,
    ),
    passes: example(
      'everything is as it was',
      `${makeSafe}- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`,
    ),
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
