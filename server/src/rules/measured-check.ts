import { standingBetween } from '../readings/standing.ts';
import type { GoodOnBench, Reading } from '../readings/reading.ts';
import type { Issue } from '../bench/issue.ts';
import type { Id, Procedure } from '../text/procedure.ts';
import type { Context, Finder, Seen } from './rule.ts';
import { listed } from './words.ts';
import { quantityFacts } from '../text/quantity-kinds.ts';

/* What is measured by hand: through a live stage, past a monitor, or where a source is still on. */

export const meterAcrossLiveFinder: Finder = { check: (context) => byMeasurement(context, acrossLive) };
export const monitorInTheWayFinder: Finder = { check: (context) => byMeasurement(context, pastMonitor) };
export const measuredUnderPowerFinder: Finder = { check: (context) => byMeasurement(context, underPower) };

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
            issue: { underline: ['across'], ...issue },
            way: bench.arrival.way,
          },
        ];
    }
    return [];
  });
}

function acrossLive(procedure: Procedure, reading: Reading, { arrival }: GoodOnBench): Issue | null {
  if (!quantityFacts[reading.quantity].byOwnCurrent) return null;
  const between = standingBetween(procedure, reading, arrival.state);
  const live = [...(between?.things ?? [])].filter((id) => procedure.parts.get(id)?.live === true);
  if (live.length === 0) return null;
  const [subject = ''] = live;
  const message =
    `The current of ${meterOf(reading)} flows through ${listed(live)}, which can fire or is live: ` +
    'never measure the resistance of a live stage. Measure on the other side of an unplugged connector, or put a load in its place and read the monitor.';
  return { rule: 'meter-across-live', subject, message };
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

function underPower(procedure: Procedure, reading: Reading, { arrival }: GoodOnBench): Issue | null {
  const between = standingBetween(procedure, reading, arrival.state);
  const source = between?.obstacle?.kind === 'source' ? between.obstacle.id : null;
  if (source === null) return null;
  const { needsIgnition = false, from = null } = procedure.regulated.get(source) ?? {};
  const { ignitionOn } = arrival.state.power;
  const off = needsIgnition && ignitionOn ? '`ignition: off`' : `\`disconnect: ${from ?? source}\``;
  const message =
    `${source} is on between the probes: what ${meterOf(reading)} shows there is no resistance, and it can be damaged. ` +
    `Needed before: ${off}, or a connector unplugged that parts them.`;
  return { rule: 'impossible', subject: reading.of, message };
}

function meterOf({ instrument }: Reading): Id {
  return instrument?.id ?? 'the instrument';
}
