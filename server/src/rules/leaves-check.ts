import type { Id } from '../text/procedure.ts';
import type { Context, Finder, Seen } from './rule.ts';

/* What a `stop` says that it leaves, held against what paths leave there. */

export const leavesFinder: Finder = { check: leavesWithoutNeed };

/** What `leaves` names although no path leaves it so: the card must not say so. */
function leavesWithoutNeed(context: Context): readonly Seen[] {
  if (context.astray) return [];
  return context.graph.steps.flatMap((step, index) => {
    if (step.verb !== 'stop' || context.reached[index] !== true) return [];
    // A stop in a routine leaves what it leaves in any of its calls.
    const same =
      step.calls.length === 0
        ? [step]
        : context.graph.steps.filter(({ path }) => path.join() === step.path.join());
    const left = context.left.filter((one) => same.some((other) => other.index === one.index));
    const isLeft = (name: Id): boolean =>
      left.some(({ id, as }) => (as === 'codes' || as === 'repair' ? as === name : id === name));
    return step.leaves
      .filter((name) => !isLeft(name))
      .map((name): Seen => ({
        index,
        issue: {
          rule: 'leaves-too-much',
          subject: name,
          underline: ['leaves', step.leaves.indexOf(name)],
          message: `\`leaves\` names ${name}, but no path leaves it here: take it out.`,
        },
      }));
  });
}
