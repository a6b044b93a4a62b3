import { expect } from 'vitest';
import type { Finding } from '../../server/src/model/finding.ts';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import type { ReadFile } from '../../server/src/text/read-procedure.ts';
import { good } from './good.ts';

/*
 * Tests of findings are written as the source with a line of carets under the characters that are meant, and behind
 * them the rule and a part of the message:
 *
 *   - unplug: K31
 *             ^^^ unknown-id: Nothing is named `K31`
 */

interface Mark {
  readonly line: number;
  readonly from: number;
  readonly to: number;
  readonly rule: string;
  readonly says: string;
}

const marker = /^( *)(\^+) ([a-z-]+): (.*)$/;

function withoutMarks(marked: string): { readonly text: string; readonly marks: readonly Mark[] } {
  const kept: string[] = [];
  const marks: Mark[] = [];
  for (const line of marked.split('\n')) {
    const found = marker.exec(line);
    if (found === null) {
      kept.push(line);
      continue;
    }
    const [, indent = '', carets = '', rule = '', says = ''] = found;
    marks.push({ line: kept.length - 1, from: indent.length, to: indent.length + carets.length, rule, says });
  }
  return { text: kept.join('\n'), marks };
}

function markOf(read: ReadFile, text: string, { at, rule, message }: Finding): Mark {
  const { from, to } = read.range(at);
  const before = text.slice(0, from).split('\n');
  const start = from - (before.at(-1) ?? '').length;
  return { line: before.length - 1, from: from - start, to: to - start, rule, says: message };
}

/** Reads the marked text and holds exactly the marked findings against it: none missing, none besides. */
export function expectMarked(marked: string): ReadFile {
  const { text, marks } = withoutMarks(marked);
  const read = readProcedure({ id: 'marked', text });
  const found = read.findings.map((finding) => markOf(read, text, finding));
  const bare = ({ line, from, to, rule }: Mark) => ({ line, from, to, rule });
  expect(found.map(bare), found.map(({ says }) => says).join('\n')).toEqual(marks.map(bare));
  for (const [index, { says }] of marks.entries()) expect(found[index]?.says).toContain(says);
  return read;
}

/** The sound procedure with one passage written otherwise. */
export function instead(passage: string, other: string): string {
  if (good.split(passage).length !== 2) throw new Error(`stands not once in the procedure: ${passage}`);
  return good.replace(passage, () => other);
}
