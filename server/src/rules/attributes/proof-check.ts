import { arcing } from '../../bench/energy.ts';
import type { Id, Procedure } from '../../model/procedure.ts';
import type { Path } from '../../model/where.ts';
import type { Context, Finder, Seen } from '../rule.ts';
import { listed } from '../words.ts';

/* Guards against a proof of nothing: what no source feeds is never live. */

export const unfedCircuitFinder: Finder = { check: unfedCircuits };
export const unfedMonitorFinder: Finder = { check: unfedMonitors };
export const noWaitFinder: Finder = { check: sourcesWithoutWait };

function everySourceIsRead(procedure: Procedure): boolean {
  return [...procedure.sources.values()].every((source) => source.feedsComplete);
}

function unfedCircuits({ procedure, circuits }: Context): readonly Seen[] {
  if (!everySourceIsRead(procedure)) return [];
  return circuits.live
    .filter((circuit) => circuit.sources.length === 0)
    .map(({ id, loop, liveParts }) => ({
      issue: {
        rule: 'unfed-circuit',
        subject: id,
        place: { path: loop?.path ?? placeOfPart(procedure, liveParts), part: 'key' },
        message:
          `No source feeds ${loop === null ? `the circuit of ${id}` : id}, which holds ${listed(liveParts)}: ` +
          `nothing would prove it safe. Name ${loop?.monitor ?? listed(liveParts)} in the \`feeds\` of a source.`,
      },
    }));
}

function placeOfPart({ parts }: Procedure, [part = '']: readonly Id[]): Path {
  return parts.get(part)?.path ?? ['network'];
}

function unfedMonitors({ procedure, circuits }: Context): readonly Seen[] {
  if (!everySourceIsRead(procedure)) return [];
  return (
    [...procedure.monitors.values()]
      .filter((monitor) => circuits.feeding(monitor.id).length === 0)
      // Where it reads a live circuit, that is what is said: naming the monitor in `feeds` mends both.
      .filter(
        (monitor) =>
          !circuits.live.some(({ loop, sources }) => loop?.monitor === monitor.id && sources.length === 0),
      )
      .map((monitor) => ({
        issue: {
          rule: 'unfed-monitor',
          subject: monitor.id,
          place: { path: monitor.path, part: 'key' },
          message: `No source feeds ${monitor.id}: name it in the \`feeds\` of the source that it runs on.`,
        },
      }))
  );
}

function sourcesWithoutWait({ procedure, circuits }: Context): readonly Seen[] {
  return [...procedure.sources.values()].flatMap((source): readonly Seen[] => {
    if (source.wait !== 'unstated' || source.reserve !== 'unstated') return [];
    const isHazard = circuits.hazards.some(({ sources }) => sources.includes(source.id));
    if (!isHazard && (source.voltage?.most ?? 0) <= arcing) return [];
    const what = isHazard ? 'feeds a live stage' : `has more than ${arcing} V`;
    const message =
      `${source.id} ${what}, and neither \`wait\` nor \`reserve\` says how long its energy lasts: ` +
      "state the wait of the maker's service information.";
    const place = { path: source.path, part: 'key' } as const;
    return [{ issue: { rule: 'no-wait', subject: source.id, place, message } }];
  });
}
