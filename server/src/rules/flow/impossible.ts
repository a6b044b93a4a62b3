import { askedBy } from '../../bench/asked.ts';
import { changesOf, changesTo } from '../../bench/changes.ts';
import type { ChangeTo, ConnectorState } from '../../bench/changes.ts';
import type { Watcher } from '../../paths/explore.ts';
import { isFarSide, loadsAt, placeInWords, stateOf } from '../../bench/hardware.ts';
import type { Hardware } from '../../bench/hardware.ts';
import type { Issue } from '../../paths/issue.ts';
import { connectedAfter, connectorWithLoads, loadItem, placeAfter, sourceItem } from '../../bench/items.ts';
import { isOpenAsAWhole } from '../../bench/moved.ts';
import { isPowered, powerAfter, powerAtStart, powerKey } from '../../bench/power.ts';
import type { Power } from '../../bench/power.ts';
import { running } from '../../paths/run.ts';
import type { Id, Mentioned, Place, Procedure, Side, Step } from '../../model/procedure.ts';
import type { Path } from '../../model/where.ts';
import { example, giveBackOpened, makeSafe } from '../examples.ts';
import type { Rule } from '../rule.ts';
import { listed } from '../words.ts';

/* What cannot be done on the bench as a path leaves it. Each thing acted on is watched alone. */

export const impossible: Rule = {
  name: 'impossible',
  severity: 'error',
  stage: 'order',
  meaning: 'Something that cannot be done on the bench as a path leaves it.',
  why: 'The reader stands there with a step that does not fit: a step is missing before, or one too many.',
  source: 'common practice',
  finder: {
    watch: ({ procedure, circuits }) => [
      ...[...procedure.connectors.keys()].map((id) => running(connectorWatcher(procedure, id))),
      ...[...procedure.loads.keys()].map((id) => running(loadWatcher(id))),
      ...[...procedure.sources.keys()].map((id) => running(sourceWatcher(id))),
      ...[...procedure.monitors.keys()]
        .filter((id) => circuits.feeding(id).length > 0)
        .map((id) => running(monitorWatcher(procedure, id, circuits.feeding(id)))),
    ],
  },
  examples: {
    triggers: example(
      'K30 is unplugged twice',
      `${makeSafe}- unplug: K30
  warning: Stay clear of the front of the airbag.
- unplug: K30
- plug: K30
${giveBackOpened}`,
    ),
    passes: example(
      'once',
      `${makeSafe}- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`,
    ),
  },
};

function issueAbout(subject: Id, message: string): Issue {
  return { rule: 'impossible', subject, message };
}

function connectorWatcher(procedure: Procedure, id: Id): Watcher<Hardware> {
  const item = connectorWithLoads(id);
  return {
    ...item,
    step: (hardware, step, report) => {
      for (const issue of connectorIssues(procedure, id, hardware, step)) report(issue);
      for (const issue of seriesIssues(id, hardware, step)) report(issue);
      for (const issue of halvesIssues(procedure, id, hardware, step)) report(issue);
      return item.step(hardware, step, report);
    },
  };
}

function connectorIssues(procedure: Procedure, id: Id, hardware: Hardware, step: Step): readonly Issue[] {
  return changesOf(step).flatMap((change): readonly Issue[] => {
    switch (change.of) {
      case 'connector':
        return change.id === id ? matingIssues(hardware, change) : [];
      case 'load':
        return change.at?.connector === id ? fittingIssues(procedure, hardware, id, change) : [];
      case 'things':
        return replacingIssues(procedure, hardware, id, change.replaced);
      case 'ignition':
      case 'source':
      case 'codes':
      case 'time':
        return [];
    }
  });
}

/** An instrument that carries a current stands in the place of a contact. */
function seriesIssues(id: Id, hardware: Hardware, step: Step): readonly Issue[] {
  const asked = askedBy(step);
  const carrying = asked?.of === 'points' ? asked.step.carrying : null;
  if (carrying?.kind !== 'series' || carrying.connector !== id) return [];
  const state = stateOf(hardware, id);
  if (state === 'unplugged') return [];
  const message = `${id} is ${state} here: the current flows through its contact, not through the instrument. Unplug it first.`;
  return [{ ...issueAbout(id, message), underline: ['in'] }];
}

/** The halves of an open connector hang on different things: moved is the one that is named. */
function halvesIssues(procedure: Procedure, id: Id, hardware: Hardware, step: Step): readonly Issue[] {
  if (step.verb !== 'wiggle') return [];
  const named = step.moved.find((one) => one.id === id && isOpenAsAWhole(one, hardware));
  if (named === undefined) return [];
  const sides = (procedure.connectors.get(id)?.sides ?? []).map((side) => `\`${id}.${side}\``);
  const message = `${id} is unplugged here, and its halves hang on different things: name the one that is moved, ${sides.join(' or ')}.`;
  return [{ ...issueAbout(id, message), immune: true, underline: named.place }];
}

/** Whether the connector of a source is open already is told of the source. */
function matingIssues(hardware: Hardware, { id, to, source }: ChangeTo<'connector'>): readonly Issue[] {
  const reason =
    (source === null ? refusal(to, stateOf(hardware, id)) : null) ?? obstruction(to, loadsAt(hardware, id));
  return reason === null ? [] : [issueAbout(id, `${id} ${reason}.`)];
}

function fittingIssues(
  { loads }: Procedure,
  hardware: Hardware,
  connector: Id,
  { id: load, named }: ChangeTo<'load'>,
): readonly Issue[] {
  const state = stateOf(hardware, connector);
  if (state === 'unplugged' || loads.get(load)?.opensShortingBar !== true) return [];
  const message = `${load} needs the mating face of ${connector}, which is ${state}: unplug it first.`;
  return [{ ...issueAbout(load, message), underline: named }];
}

function replacingIssues(
  procedure: Procedure,
  hardware: Hardware,
  connector: Id,
  replaced: readonly Mentioned[],
): readonly Issue[] {
  return eachMeant(replaced).flatMap(([what, place]): Issue[] => {
    const sitting = loadsHeldBy(procedure, what, connector, hardware);
    if (sitting.length === 0) return [];
    const message = `${what} cannot be replaced while ${listed(sitting)} sits on ${what === connector ? 'it' : connector}: remove it first.`;
    return [{ ...issueAbout(what, message), underline: place }];
  });
}

/**
 * Loads on a connector that go away with a thing that is replaced: all of them with the connector itself, those on the
 * half of it that hangs on a part or monitor with that.
 */
function loadsHeldBy(procedure: Procedure, what: Id, connector: Id, hardware: Hardware): readonly Id[] {
  if (what === connector) return loadsAt(hardware, connector);
  return loadsAt(hardware, connector).filter((load) => {
    const side = hardware.loads.get(load)?.side;
    return side !== undefined && besides(procedure, connector, side).includes(what);
  });
}

/** What stands next to one side of a connector in its loops and the network: the owner of that half. */
function besides(procedure: Procedure, connector: Id, side: Side): readonly Id[] {
  const isFar = isFarSide(procedure, connector, side);
  const inLoops = [...procedure.loops.values()].flatMap((loop) => {
    const at = loop.elements.findIndex(({ id }) => id === connector);
    if (at === -1) return [];
    const beside = isFar ? loop.elements[at + 1]?.id : (loop.elements[at - 1]?.id ?? loop.monitor);
    return beside === undefined || beside === null ? [] : [beside];
  });
  const { elements } = procedure.network;
  const nodes = elements.flatMap((element) =>
    element.kind === 'connector' && element.id === connector ? [element.between[isFar ? 1 : 0]] : [],
  );
  const inNetwork = elements.filter(
    ({ kind, between }) => kind === 'part' && between.some((node) => nodes.includes(node)),
  );
  return [...inLoops, ...inNetwork.map(({ id }) => id)];
}

/** Everything that is replaced, with the place that names it or its assembly. */
function eachMeant(mentioned: readonly Mentioned[]): readonly (readonly [Id, Path])[] {
  return mentioned.flatMap(({ members, place }) => members.map((id) => [id, place] as const));
}

function obstruction(to: ConnectorState, sitting: readonly Id[]): string | null {
  if (to === 'unlocked' || sitting.length === 0) return null;
  return `cannot be ${to === 'mated' ? 'plugged' : to} while ${listed(sitting)} sits on it: remove it first`;
}

function refusal(to: ConnectorState, state: ConnectorState): string | null {
  const isThere = to === 'unlocked' ? state !== 'mated' : state === to;
  return isThere ? `is already ${state} when a path comes here` : null;
}

function loadWatcher(id: Id): Watcher<Place | null> {
  return {
    ...loadItem(id),
    step: (at, step, report) => {
      for (const { before } of changesTo('load', step).filter((change) => change.id === id)) {
        if (before === 'loose' && at !== null)
          report(issueAbout(id, `${id} is still fitted at ${placeInWords(at)} when a path comes here.`));
        if (before === 'fitted' && at === null)
          report(issueAbout(id, `${id} is not fitted anywhere when a path comes here.`));
      }
      return placeAfter(at, step, id);
    },
  };
}

function sourceWatcher(id: Id): Watcher<boolean> {
  return {
    ...sourceItem(id),
    step: (connected, step, report) => {
      const after = connectedAfter(connected, step, id);
      if (after === connected && changesTo('source', step).some((change) => change.id === id))
        report(
          issueAbout(id, `${id} is already ${after ? 'connected' : 'disconnected'} when a path comes here.`),
        );
      return after;
    },
  };
}

function monitorWatcher(procedure: Procedure, id: Id, feeding: readonly Id[]): Watcher<Power> {
  return {
    watches: `the power of ${id}`,
    start: powerAtStart,
    key: powerKey,
    step: (power, step, report) => {
      if (asks(procedure, id, step) && !isPowered(power, feeding))
        report(issueAbout(id, `${id} has no power when a path comes here: ${missingPower(power, feeding)}.`));
      return powerAfter(power, step, feeding);
    },
  };
}

function missingPower(power: Power, feeding: readonly Id[]): string {
  const off = feeding.every((source) => power.disconnected.includes(source));
  const causes = [
    ...(power.ignitionOn ? [] : ['the ignition is off']),
    ...(off ? [`${listed(feeding)} is disconnected`] : []),
  ];
  return listed(causes);
}

function asks(procedure: Procedure, monitor: Id, step: Step): boolean {
  const asked = askedBy(step);
  switch (asked?.of) {
    case 'loops':
      return asked.step.loops.some((loop) => procedure.loops.get(loop)?.monitor === monitor);
    case 'memory':
      return asked.monitor === monitor;
    case 'points':
    case undefined:
      return false;
  }
}
