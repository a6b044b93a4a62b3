/** A shipped procedure with one thing wrong, and what was done to it. */
export interface Mutant {
  readonly name: string;
  readonly text: string;
}

interface Block {
  readonly lines: readonly string[];
  readonly isSection: boolean;
}

interface Split {
  readonly head: string;
  readonly blocks: readonly Block[];
}

/** The lines of each item of `steps`; blank lines stay with the item before them. */
function split(text: string): Split {
  const [head = '', rest = ''] = text.split(/^steps:\n/m);
  const blocks: { lines: string[]; isSection: boolean }[] = [];
  for (const line of rest.split('\n')) {
    if (line.startsWith('  - ')) blocks.push({ lines: [line], isSection: line.startsWith('  - section:') });
    else blocks.at(-1)?.lines.push(line);
  }
  return { head, blocks };
}

function joined(head: string, blocks: readonly Block[]): string {
  return `${head}steps:\n${blocks.flatMap(({ lines }) => lines).join('\n')}`;
}

/** Deletes each step in turn. */
export function withoutEachStep(text: string): readonly Mutant[] {
  const { head, blocks } = split(text);
  return blocks.flatMap((block, at) =>
    block.isSection
      ? []
      : [
          {
            name: `without ${block.lines[0]?.trim() ?? ''} (${at})`,
            text: joined(head, blocks.toSpliced(at, 1)),
          },
        ],
  );
}

/** Swaps each step with the one behind it; a heading between them stays where it is. */
export function withEachPairSwapped(text: string): readonly Mutant[] {
  const { head, blocks } = split(text);
  const steps = blocks.flatMap((block, at) => (block.isSection ? [] : [at]));
  return steps.slice(0, -1).flatMap((first, at) => {
    const second = steps[at + 1] ?? first;
    const [one, other] = [blocks[first], blocks[second]];
    if (one === undefined || other === undefined) return [];
    const name = `${one.lines[0]?.trim() ?? ''} (${first}) behind ${other.lines[0]?.trim() ?? ''}`;
    return [{ name, text: joined(head, blocks.with(first, other).with(second, one)) }];
  });
}

/** Replaces each place where the pattern stands, one at a time. */
export function withEach(text: string, pattern: RegExp, by: string, name: string): readonly Mutant[] {
  return [...text.matchAll(pattern)].map((match, at) => ({
    name: `${name} (${at})`,
    text:
      text.slice(0, match.index) + match[0].replace(pattern, by) + text.slice(match.index + match[0].length),
  }));
}

/** Deletes each entry of each loop's path. */
export function withoutEachPathEntry(text: string): readonly Mutant[] {
  return [...text.matchAll(/path: \[([^\]]*)\]/g)].flatMap((match) => {
    const entries = (match[1] ?? '').split(', ');
    return entries.map((entry, at) => ({
      name: `path without ${entry}`,
      text:
        text.slice(0, match.index) +
        `path: [${entries.toSpliced(at, 1).join(', ')}]` +
        text.slice(match.index + match[0].length),
    }));
  });
}
