import { standingBetween } from '../readings/standing.ts';
import type { GoodOnBench, Reading } from '../readings/reading.ts';
import type { Issue } from '../bench/issue.ts';
import type { Procedure } from '../text/procedure.ts';
import type { Context, Finder, Seen } from './rule.ts';

/* What is measured by hand past a monitor. */

export const monitorInTheWayFinder: Finder = { check: (context) => byMeasurement(context, pastMonitor) };

type Look = (procedure: Procedure, reading: Reading, bench: GoodOnBench) => Issue | null;

/** The nearest bench of each measurement on which something is wrong. */
function byMeasurement({ procedure, readings }: Context, look: Look): readonly Seen[] {
  return readings.readings.flatMap((reading): readonly Seen[] => {
    if (reading.loop !== null) return [];
    for (const bench of reading.good) {
      const issue = look(procedure, reading, bench);
      if (issue !== null)
        return [
          {
            index: reading.index,
            issue: { underline: ['across'], ...issue },
            hops: bench.arrival.way.hops(),
          },
        ];
    }
    return [];
  });
}

function pastMonitor(procedure: Procedure, reading: Reading, { arrival }: GoodOnBench): Issue | null {
  const between = standingBetween(procedure, reading, arrival.state);
  const monitor = between?.obstacle?.kind === 'monitor' ? between.obstacle.id : null;
  if (monitor === null) return null;
  const message =
    `${monitor} lies between the probes, and what is inside of it is not known: no window can be computed. ` +
    'Unplug it from what is measured first.';
  return { rule: 'monitor-in-the-way', subject: monitor, message };
}
