import { askedBy } from '../../bench/asked.ts';
import { standingBetween } from '../../readings/standing.ts';
import type { GoodOnBench, Reading } from '../../readings/reading.ts';
import { barIsClosed } from '../../bench/hardware.ts';
import type { Issue } from '../../paths/issue.ts';
import type { Id, Procedure } from '../../model/procedure.ts';
import { whereMeasured } from '../../model/step-in-words.ts';
import type { Context, Finder, Seen } from '../rule.ts';

/* What is measured by hand past a monitor, or across a closed shorting bar. */

export const monitorInTheWayFinder: Finder = { check: (context) => byMeasurement(context, pastMonitor) };
export const barInTheWayFinder: Finder = { check: (context) => byMeasurement(context, acrossBar) };

type Look = (procedure: Procedure, reading: Reading, bench: GoodOnBench) => Issue | null;

/** The nearest bench of each measurement on which something is wrong. */
function byMeasurement({ procedure, explorer, readings }: Context, look: Look): readonly Seen[] {
  return readings.readings.flatMap((reading): readonly Seen[] => {
    if (reading.loop !== null) return [];
    for (const bench of reading.good) {
      explorer.spend(20 * reading.island.elements.length);
      const issue = look(procedure, reading, bench);
      if (issue !== null)
        return [
          {
            index: reading.index,
            issue: { underline: [whereMeasured(reading.carrying)], ...issue },
            way: bench.arrival.way,
          },
        ];
    }
    return [];
  });
}

function pastMonitor(procedure: Procedure, reading: Reading, { arrival }: GoodOnBench): Issue | null {
  const between = standingBetween(procedure, reading, arrival.state);
  if (between?.obstacle?.kind === 'consumer') {
    const { id } = between.obstacle;
    const message =
      `${id} lies between the probes, and of it only the current is stated that it draws: no window can be computed. ` +
      'Unplug it from what is measured first.';
    return { rule: 'monitor-in-the-way', subject: id, message };
  }
  const monitor = between?.obstacle?.kind === 'monitor' ? between.obstacle.id : null;
  if (monitor === null) return null;
  const message =
    `${monitor} lies between the probes, and what is inside of it is not known: no window can be computed. ` +
    'Unplug it from what is measured first.';
  return { rule: 'monitor-in-the-way', subject: monitor, message };
}

function acrossBar(procedure: Procedure, reading: Reading, { arrival }: GoodOnBench): Issue | null {
  const step = procedure.steps[reading.index];
  const asked = step === undefined ? null : askedBy(step);
  if (asked?.of !== 'points' || asked.step.expect !== null) return null;
  const [one, other] = asked.step.across;
  if ('node' in one || 'node' in other || one.connector !== other.connector) return null;
  const connector = procedure.connectors.get(one.connector);
  const bar = connector?.shortingBar ?? null;
  if (connector === undefined || bar === null) return null;
  if (one.side !== bar.side || other.side !== bar.side) return null;
  const bridged = bar.pins === null ? loopPins(procedure, connector.id) : [bar.pins];
  const isBridged = bridged.some((pins) => pins.includes(one.pin) && pins.includes(other.pin));
  if (!(isBridged || bridged.length === 0) || !barIsClosed(procedure, connector, arrival.state.hardware))
    return null;
  const [near, far] = connector.sides;
  const message =
    `The shorting bar of ${connector.id} is closed across ${reading.of} here, so ${reading.instrument?.id ?? 'the instrument'} shows the bar, whatever hangs on it. ` +
    `Measure at ${connector.id}.${bar.side === near ? far : near}, or state with \`expect\` what the bar itself shows.`;
  return { rule: 'bar-in-the-way', subject: connector.id, message };
}

/** The pins that each loop uses of a connector; a bar that names none bridges those. */
function loopPins({ loops }: Procedure, connector: Id): readonly (readonly [string, string])[] {
  return [...loops.values()].flatMap(({ pins }) => {
    const used = pins.get(connector);
    return used === undefined ? [] : [used];
  });
}
