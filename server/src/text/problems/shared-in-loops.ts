import { keyAt, valueAt } from '../problem.ts';
import type { Problem } from '../problem.ts';
import type { Id, Part } from '../../model/procedure.ts';
import type { DraftLoop } from '../draft-loop.ts';
import { grouped } from '../../model/remembered.ts';
import type { Path } from '../../model/where.ts';

interface Use {
  readonly loop: DraftLoop;
  readonly at: Path;
}

/** What loops may share: a part with two conductors (a pair of its own for each), and a connector with other pins. */
export function checkShared(
  loops: readonly DraftLoop[],
  parts: ReadonlyMap<Id, Part>,
  report: (problem: Problem) => void,
): void {
  for (const [id, uses] of usesOf(loops, 'part')) {
    if (parts.get(id)?.form === 'end') endPartOnce(id, uses, report);
  }
  for (const [id, uses] of usesOf(loops, 'connector')) {
    if (uses.length > 1) pinsOnce(id, uses, report);
  }
}

function usesOf(loops: readonly DraftLoop[], kind: 'part' | 'connector'): ReadonlyMap<Id, readonly Use[]> {
  const uses = loops.flatMap((loop) =>
    loop.elements
      .filter((element) => element.kind === kind)
      .map(({ id, at }): readonly [Id, Use] => [id, { loop, at }]),
  );
  return grouped(uses);
}

function endPartOnce(id: Id, [first, ...others]: readonly Use[], report: (problem: Problem) => void): void {
  if (first === undefined) return;
  for (const other of others) {
    other.loop.complete = false;
    report({
      rule: 'wrong-loop',
      at: valueAt(other.at),
      message: `\`${id}\` closes the loop \`${first.loop.id}\` already. A part that closes a loop stands in one loop.`,
      subject: id,
      related: [{ at: valueAt(first.at), message: 'It stands here.' }],
    });
  }
}

function pinsOnce(id: Id, uses: readonly Use[], report: (problem: Problem) => void): void {
  const taken = new Map<string, Path>();
  for (const { loop, at } of uses) {
    const written = loop.pins.get(id);
    if (written === undefined) {
      // Pins that are there and wrong have been reported.
      if (loop.complete) {
        report({
          rule: 'wrong-loop',
          at: valueAt(at),
          message: `\`${id}\` stands in several loops, so each says which pins it uses: \`pins: { ${id}: [3, 4] }\`.`,
          subject: id,
        });
      }
      loop.complete = false;
      continue;
    }
    for (const [index, pin] of written.pins.entries()) {
      const earlier = taken.get(pin);
      if (earlier === undefined) {
        taken.set(pin, [...written.at, index]);
        continue;
      }
      loop.complete = false;
      report({
        rule: 'wrong-loop',
        at: valueAt([...written.at, index]),
        message: `Pin ${pin} of \`${id}\` belongs to another loop already.`,
        subject: `${id} ${pin}`,
        related: [{ at: keyAt(earlier), message: 'It is used here.' }],
      });
    }
  }
}
