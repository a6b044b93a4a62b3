import { fragmentsOf } from '../../bench/fragments.ts';
import type { FragmentIndex } from '../../bench/fragments.ts';
import { loadsAt, stateOf } from '../../bench/hardware.ts';
import type { Hardware } from '../../bench/hardware.ts';
import { isolatedBy } from '../../bench/hazards.ts';
import type { Issue } from '../../paths/issue.ts';
import { fragmentsMoved } from '../../bench/moved.ts';
import type { Id, Moved, Procedure } from '../../model/procedure.ts';
import { movedInWords } from '../../model/step-in-words.ts';
import { stagesIn } from './stages-in.ts';
import { listed } from '../words.ts';

/* What is said of a stage that hangs together with what is moved. */

export function movedWithStage(
  procedure: Procedure,
  hardware: Hardware,
  moved: Moved,
  stages: readonly Id[],
): Issue {
  const issue = { rule: 'moved-with-stage', subject: moved.id, cause: stages.join() };
  if (stages.includes(moved.id)) {
    const message =
      `${moved.id} is a stage: it can fire while it is moved. ` +
      'Unplug it, with the power off and the wait over, and move what leads to it instead.';
    return { ...issue, message };
  }
  const [hangs, it] = stages.length === 1 ? ['hangs', 'it'] : ['hang', 'them'];
  const what = movedInWords(moved);
  const message =
    `${listed(stages)} ${hangs} on ${what} here: a wire or contact at fault can fire ${it} while ${what} is moved. ` +
    `Add before it: ${partedBy(procedure, hardware, moved)}, with the power off and the wait over.`;
  return { ...issue, message };
}

/** So many connectors are tried, and so many of them told. */
const mostTried = 24;
const mostTold = 3;

/** Each connector that by itself, unplugged, parts what is moved from all stages. */
function partedBy(procedure: Procedure, hardware: Hardware, moved: Moved): string {
  const { connectors } = procedure;
  const fragments = fragmentsOf(procedure);
  const piece = new Set(pieceOf(procedure, hardware, moved));
  const tried = [...connectors.keys()].filter(
    (id) =>
      stateOf(hardware, id) !== 'unplugged' &&
      loadsAt(hardware, id).length === 0 &&
      isolatedBy(procedure, id) === null &&
      fragments.of(id).some((index) => piece.has(index)),
  );
  const ways = tried.slice(0, mostTried).flatMap((id): readonly string[] => {
    const apart = { ...hardware, connectors: new Map(hardware.connectors).set(id, 'unplugged' as const) };
    const isFree = (one: Moved): boolean => stagesIn(procedure, pieceOf(procedure, apart, one)).length === 0;
    if (id !== moved.id || moved.side !== undefined) return isFree(moved) ? [`\`unplug: ${id}\``] : [];
    const sides = (connectors.get(id)?.sides ?? []).filter((side) => isFree({ ...moved, side }));
    return sides.map((side) => `\`unplug: ${id}\`, and only \`${id}.${side}\` moved`);
  });
  return ways.length === 0 ? 'connectors unplugged between them' : ways.slice(0, mostTold).join(', or ');
}

/** All that hangs together with what is moved. */
function pieceOf(procedure: Procedure, hardware: Hardware, moved: Moved): readonly FragmentIndex[] {
  const fragments = fragmentsOf(procedure);
  const pieces = fragments.pieces(hardware);
  const here = new Set(fragmentsMoved(fragments, moved).map((index) => pieces[index]));
  return [...fragments.all.keys()].filter((index) => here.has(pieces[index]));
}
