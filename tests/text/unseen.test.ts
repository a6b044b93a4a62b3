import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { applyEdits } from '../../server/src/project/edit.ts';
import { fixFor } from '../../server/src/fixes/fix.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { good } from './good.ts';

const [rlo, alm, zwsp] = ['\u202e', '\u061c', '\u200b'] as const;
const title = 'Halden';

/** The findings as `RULE SUBJECT "what is marked"`. */
function found(text: string): readonly string[] {
  const analysis = analyse(snapshotOf([{ id: 'a.procedure.yaml', text }]), 'a.procedure.yaml');
  return finish(analysis.findings('text')).map(({ rule, severity, subject, at }) => {
    const { from, to } = analysis.range(at);
    return `${severity} ${rule} ${subject ?? ''} ${JSON.stringify(text.slice(from, to))}`;
  });
}

describe('what turns text round, and what is not seen', () => {
  test('is found in a value, at the character', () => {
    expect(found(good)).toEqual([]);
    expect(found(good.replace(title, `Hal${rlo}den`))).toEqual([`error turned-text U+202E "${rlo}"`]);
    expect(found(good.replace(title, `${alm}Halden`))).toEqual([`error turned-text U+061C "${alm}"`]);
    expect(found(good.replace(title, `Hal${zwsp}den`))).toEqual([
      `warning hidden-character U+200B "${zwsp}"`,
    ]);
  });

  test('is found where it is written as an escape', () => {
    for (const escape of ['\\u202E', '\\U0000202e'])
      expect(found(good.replace(/^title: .*$/m, `title: "x${escape}y"`))).toEqual([
        `error turned-text U+202E ${JSON.stringify(escape)}`,
      ]);
    for (const [escape, name] of [
      ['\\e', 'U+001B'],
      ['\\x9b', 'U+009B'],
      ['\\L', 'U+2028'],
    ] as const)
      expect(found(good.replace(/^title: .*$/m, `title: "x\\\\${escape}y"`))).toEqual([
        `warning hidden-character ${name} ${JSON.stringify(escape)}`,
      ]);
  });

  test('is found in a text of several lines, and in a key', () => {
    expect(found(good.replace(/^title: .*$/m, `title: |\n  one\n  two ${rlo}three`))).toEqual([
      `error turned-text U+202E "${rlo}"`,
    ]);
    expect(found(good.replace(/^title:/m, `purpose: x\nti${zwsp}tle:`))).toContain(
      `warning hidden-character U+200B "${zwsp}"`,
    );
  });

  test('is one finding for each character of a value', () => {
    expect(found(good.replace(title, `${rlo}a${rlo}b${zwsp}`))).toEqual([
      `error turned-text U+202E "${rlo}"`,
      `warning hidden-character U+200B "${zwsp}"`,
    ]);
  });

  test('may stand in a comment; what writes other scripts may stand anywhere', () => {
    expect(found(`# ${rlo}x\n${good}`)).toEqual([]);
    for (const text of ['נתק את הסוללה', 'نمی\u200cشود', 'क्\u200dष', '⚠\ufe0f 👩🏽\u200d🔧'])
      expect(found(good.replace(title, text))).toEqual([]);
  });

  test('marks of direction may stand in a value with letters from right to left, and nothing else of the kind may', () => {
    for (const mark of ['\u200e', '\u200f', alm]) {
      for (const letter of ['נתק', 'افصل', 'ܐ', 'ހ', 'ߊ'])
        expect(found(good.replace(title, `${letter} (K30)${mark} Halden`))).toEqual([]);
      const name = `U+${mark.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`;
      const told = [`error turned-text ${name} ${JSON.stringify(mark)}`];
      // No letters, digits alone, and letters in another value.
      expect(found(good.replace(title, `Hal${mark}den`))).toEqual(told);
      expect(found(good.replace(title, `٣٢١${mark}`))).toEqual(told);
      expect(found(good.replace(title, 'נתק').replace('revision: B', `revision: B${mark}`))).toEqual(told);
      expect(found(good.replace(/^title:/m, `purpose: x\nנתק${mark}:`))).toContain(told[0]);
    }
    for (const other of [rlo, '\u202b', '\u2067', '\u2069'])
      expect(found(good.replace(title, `נתק${other}`))[0]).toContain('error turned-text');
  });

  test('the fix for a mark of direction leaves those that may stand', () => {
    const text = good.replace(title, 'נתק (K30)\u200f').replace('revision: B', 'revision: B\u200f');
    const analysis = analyse(snapshotOf([{ id: 'a.procedure.yaml', text }]), 'a.procedure.yaml');
    const [finding] = finish(analysis.findings('order'));
    const fix = finding === undefined ? null : finish(fixFor(analysis, finding));
    expect(applyEdits(text, fix?.edits ?? [])).toBe(text.replace('B\u200f', 'B'));
  });

  test('of a parts file is a finding where that is used', () => {
    const files = [
      { id: 'a.procedure.yaml', text: `uses: [b.parts.yaml]\n${good}` },
      { id: 'b.parts.yaml', text: `format: 1\ntitle: x${rlo}\n` },
    ];
    const findings = finish(analyse(snapshotOf(files), 'a.procedure.yaml').findings('text'));
    expect(findings.map(({ rule, message }) => [rule, message.includes('turns the direction')])).toEqual([
      ['parts-file', true],
    ]);
  });

  test('is deleted by its fix wherever it stands, and nothing else is', () => {
    const text = good.replace(title, `${rlo}Hal${rlo}den`).replace(/^/, `# 👩\u200d🔧 ${rlo}\n`);
    const analysis = analyse(snapshotOf([{ id: 'a.procedure.yaml', text }]), 'a.procedure.yaml');
    const [finding] = finish(analysis.findings('order'));
    const fix = finding === undefined ? null : finish(fixFor(analysis, finding));
    expect(fix?.title).toBe('Delete U+202E, 3 times');
    expect(applyEdits(text, fix?.edits ?? [])).toBe(`# 👩\u200d🔧 \n${good}`);
  });
});
