import { formatQuantity, isMoreThanTenth } from '../../quantity/quantity.ts';
import { isStage } from '../../model/part-kinds.ts';
import type { Monitor, Part } from '../../model/procedure.ts';
import type { Context, Finder, Seen } from '../rule.ts';

/* What an instrument sends through a live stage while it reads the loop: it does so whenever it is powered. */

export const testCurrentFinder: Finder = { check: testCurrents };
export const testCurrentUnknownFinder: Finder = { check: unknownCurrents };

function testCurrents({ procedure, circuits }: Context): readonly Seen[] {
  return circuits.live.flatMap(({ loop, liveParts }) => {
    if (loop === null) return [];
    const monitor = loop.monitor === null ? undefined : procedure.monitors.get(loop.monitor);
    return monitor === undefined
      ? []
      : liveParts.flatMap((id) => compared(monitor, procedure.parts.get(id), procedure.file));
  });
}

/** Instruments and stages of which a current is not stated, each once. Held back while the text has an error. */
function unknownCurrents({ procedure, circuits, isWhole }: Context): readonly Seen[] {
  if (!isWhole) return [];
  const found = new Map<string, Seen>();
  for (const { loop, liveParts } of circuits.live) {
    const monitor =
      loop?.monitor === undefined || loop.monitor === null ? undefined : procedure.monitors.get(loop.monitor);
    if (loop === null || monitor === undefined) continue;
    for (const stage of liveParts.map((id) => procedure.parts.get(id)).filter(isStage)) {
      if (monitor.testCurrent === null && !found.has(monitor.id))
        found.set(monitor.id, notStated(monitor, 'test-current', `${monitor.id} reads ${loop.id}`));
      if (stage?.noFire === null && !found.has(stage.id))
        found.set(stage.id, notStated(stage, 'no-fire', `${monitor.id} reads ${stage.id}`));
    }
  }
  return [...found.values()];
}

function notStated({ id, path }: Monitor | Part, key: string, what: string): Seen {
  const message =
    `${what}, and \`${key}\` of ${id} is not stated: nobody can tell whether the current of the reading is safe for the stage. ` +
    "State it as the maker's service information does.";
  return { issue: { rule: 'test-current-unknown', subject: id, place: { path, part: 'key' }, message } };
}

function compared(monitor: Monitor, stage: Part | undefined, file: string): readonly Seen[] {
  const current = monitor.testCurrent?.most;
  const noFire = stage?.noFire?.least;
  if (stage === undefined || current === undefined || noFire === undefined) return [];
  if (!isMoreThanTenth(current, noFire)) return [];
  const amperes = (value: number): string => formatQuantity(value, 'current');
  const message =
    `${monitor.id} sends up to ${amperes(current)} through ${stage.id} to read it. No more than ` +
    `${amperes(noFire / 10)} may flow: a tenth of the ${amperes(noFire)} at which it surely does not fire.`;
  const related = [
    {
      at: { file, path: [...stage.path, 'no-fire'], part: 'value' as const },
      message: `the no-fire current of ${stage.id}`,
    },
  ];
  const place = { path: [...monitor.path, 'test-current'], part: 'value' as const };
  return [{ issue: { rule: 'test-current', subject: stage.id, place, message, related } }];
}
