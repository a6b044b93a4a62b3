import { describe, expect, test } from 'vitest';
import { writeCard } from '../../server/src/cli/card.ts';
import { report } from '../../server/src/cli/check.ts';
import { runOrSay } from '../../server/src/cli/run.ts';
import type { Exit } from '../../server/src/cli/terminal.ts';
import { writeWindows } from '../../server/src/cli/windows.ts';
import { OutputFailed } from '../../server/src/host/terminal.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import type { Analysis } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { rules } from '../../server/src/rules/rules.ts';
import type { Seen } from '../../server/src/rules/rule.ts';
import { wayAlong } from '../../server/src/paths/trace.ts';
import type { Hops } from '../../server/src/paths/trace.ts';
import { throwing, withFailingBounds, withFailingParts, withFailingRule } from '../project/failing.ts';
import { fakeTerminal } from './fake-terminal.ts';
import type { Ran } from './fake-terminal.ts';
import { parsed } from './sarif-log.ts';

const other = 'other.procedure.yaml';

/** A file with one error. */
function otherFile(): Analysis {
  const text = rules.find(({ name }) => name === 'live-touch')?.examples.triggers.text ?? '';
  return analyse(snapshotOf([{ id: other, text }]), other);
}

function seenBy(run: (terminal: ReturnType<typeof fakeTerminal>['terminal']) => Exit): Ran {
  const { terminal, seen } = fakeTerminal();
  const exit = run(terminal);
  return { exit, ...seen() };
}

function checked(format: 'text' | 'json' | 'sarif', ...analyses: readonly Analysis[]): Ran {
  return seenBy((terminal) =>
    report(terminal, analyses, { problems: [], passedOver: [] }, { format, strict: false }),
  );
}

/** A rule whose finding cannot be written: the way to it fails when it is asked for. */
function withBrokenWay(): Analysis {
  class Broken extends Array<Seen> {
    override [Symbol.iterator](): never {
      throw new Error('no way');
    }
  }
  const hops = new Broken(3).fill({ index: 1, by: null } as never) as unknown as Hops;
  const issue = { rule: 'failing', message: 'This is found.' };
  return withFailingRule('order', { check: () => [{ issue, index: 1, way: wayAlong(hops) }] });
}

const failures = [
  ['the text', withFailingParts],
  ['the windows', withFailingBounds],
  ['a rule', () => withFailingRule('order', throwing(new Error('no luck')))],
] as const;

describe.each(failures)('where %s fails inside Ohmwright', (_, made) => {
  test('check says so, reports the other files, and ends with 2', () => {
    const { exit, out, err } = checked('text', made(), otherFile());
    expect([exit, err]).toEqual([2, '']);
    expect(out).toMatch(/^a\.procedure\.yaml:1:1: error not-checked\n/);
    expect(out).toContain(`${other}:`);
    expect(out).toContain('error live-touch');
    expect(out).toContain('\nnot-checked: Ohmwright itself failed, and part of the file is not checked.\n');
    expect(out).toMatch(/\n2 files checked, 1 of them not to the end: \d+ errors, /);
  });

  test('the JSON is not complete', () => {
    const { exit, out } = checked('json', made(), otherFile());
    const document = JSON.parse(out) as { complete: boolean; files: { findings: { rule: string }[] }[] };
    expect([exit, document.complete]).toEqual([2, false]);
    expect(document.files.map(({ findings }) => findings[0]?.rule)).toEqual(['not-checked', 'live-touch']);
  });

  test('the SARIF log tells of a run that did not succeed', () => {
    const { exit, out } = checked('sarif', otherFile(), made());
    const [run] = parsed(out).runs;
    expect(exit).toBe(2);
    expect(run.invocations[0]).toMatchObject({
      executionSuccessful: false,
      exitCode: 2,
      toolExecutionNotifications: [
        {
          level: 'error',
          message: {
            text: expect.stringContaining('because Ohmwright itself failed: Error: no ') as unknown,
          },
          locations: [{ physicalLocation: { artifactLocation: { uri: 'a.procedure.yaml' } } }],
        },
      ],
    });
    expect(run.results.map(({ ruleId }) => ruleId)).toEqual(
      expect.arrayContaining(['not-checked', 'live-touch']),
    );
  });

  test.each([false, true])('no card is written, draft: %s', (draft) => {
    const { exit, out, err, written } = seenBy((terminal) =>
      writeCard(terminal, made(), { to: 'card.html', paper: 'A4', draft }),
    );
    expect([exit, written.size]).toEqual([2, 0]);
    expect(err).toBe(
      'ohmwright: no card is written, and no draft of it: the file is not checked to its end\n',
    );
    expect(out).toContain('error not-checked');
  });
});

describe.each(failures.slice(0, 2))('where %s fails inside Ohmwright', (_, made) => {
  test('windows are not printed, and the machine format says that they are not complete', () => {
    const asText = seenBy((terminal) =>
      writeWindows(terminal, made(), { format: 'text', why: true, entered: [] }),
    );
    expect([asText.exit, asText.out]).toEqual([2, '']);
    expect(asText.err).toMatch(/^ohmwright: a\.procedure\.yaml: Ohmwright failed while it [^\n]*\n$/);
    const asJson = seenBy((terminal) =>
      writeWindows(terminal, made(), { format: 'json', why: true, entered: [], step: '8' }),
    );
    expect([asJson.exit, JSON.parse(asJson.out)]).toEqual([2, expect.objectContaining({ complete: false })]);
  });
});

describe('a finding that cannot be written', () => {
  const line = /^ohmwright: not all that was found in a\.procedure\.yaml can be written: Error: no way\n$/;

  test('is written without its place, and does not keep the others', () => {
    const { exit, out, err } = checked('text', withBrokenWay(), otherFile());
    expect(exit).toBe(2);
    expect(err).toMatch(line);
    expect(out).toContain('a.procedure.yaml: error failing\n  This is found.\n');
    expect(out.match(/error live-touch/g)).toHaveLength(2);
  });

  test.each(['json', 'sarif'] as const)('is missed in %s, and the document says so', (format) => {
    const { exit, out, err } = checked(format, withBrokenWay(), otherFile());
    expect(exit).toBe(2);
    expect(err).toMatch(line);
    const document = JSON.parse(out) as { complete?: boolean; runs?: { invocations: unknown[] }[] };
    if (format === 'json') expect(document.complete).toBe(false);
    else
      expect(document.runs?.[0]?.invocations[0]).toMatchObject({
        executionSuccessful: false,
        exitCode: 2,
        toolExecutionNotifications: [{ message: { text: expect.stringContaining('no way') as unknown } }],
      });
    expect(out.match(/live-touch/g)?.length).toBeGreaterThan(1);
  });
});

describe('the program as a whole', () => {
  const failing = (error: Error): Ran => {
    const readInput = (): never => {
      throw error;
    };
    const { terminal, seen } = fakeTerminal({ readInput });
    const exit = runOrSay(terminal, ['check', '-', '--name', 'a.procedure.yaml']);
    return { exit, ...seen() };
  };

  test('says in one line what was thrown, and ends with 2', () => {
    const { exit, out, err } = failing(new Error('two\nlines'));
    expect([exit, out]).toEqual([2, '']);
    expect(err).toMatch(
      /^ohmwright: the program itself failed: Error: two lines\. Send the command [^\n]*\n$/,
    );
  });

  test('says that its output could not be written', () => {
    const { exit, err } = failing(new OutputFailed('no space left on device'));
    expect([exit, err]).toEqual([2, 'ohmwright: cannot write the output: no space left on device\n']);
  });
});
