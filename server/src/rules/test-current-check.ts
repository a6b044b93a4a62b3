import { formatQuantity, isMoreThanTenth } from '../quantity/quantity.ts';
import type { Monitor, Part } from '../text/procedure.ts';
import type { Context, Finder, Seen } from './rule.ts';

/* What an instrument sends through a live stage while it reads the loop: it does so whenever it is powered. */

export const testCurrentFinder: Finder = { check: testCurrents };

function testCurrents({ procedure, circuits }: Context): readonly Seen[] {
  return circuits.live.flatMap(({ loop, liveParts }) => {
    if (loop === null) return [];
    const monitor = loop.monitor === null ? undefined : procedure.monitors.get(loop.monitor);
    return monitor === undefined
      ? []
      : liveParts.flatMap((id) => compared(monitor, procedure.parts.get(id), procedure.file));
  });
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
