import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, expect, test } from 'vitest';
import { describeWith, lacksProgram } from '../needs.ts';
import { program, shipped } from '../workbench/paths.ts';
import { firstFinding, printedWindows } from '../workbench/program.ts';

/*
 * Neovim's own client, written by others from the same specification, against the server: an editor that can do other
 * things than the one that the extension is for, and that is sent what is found instead of asking for it.
 */

interface Report {
  readonly problem?: string;
  readonly server?: string;
  readonly messages: readonly string[];
  readonly findings: readonly {
    readonly line: number;
    readonly column: number;
    readonly lastLine: number;
    readonly lastColumn: number;
    readonly rule: string;
    readonly severity: number;
    readonly message: string;
  }[];
  readonly hover: { readonly line: number; readonly text: string };
  readonly hints: readonly { readonly position: { readonly line: number }; readonly label: string }[];
  readonly fix: string;
  readonly text: readonly string[];
  readonly exitCode: number;
}

describeWith(lacksProgram('nvim'), 'an unsafe procedure in Neovim', () => {
  const off = '  - disconnect: battery';
  const lines = readFileSync(shipped, 'utf8').split('\n');
  const unsafe = lines.toSpliced(lines.indexOf(off), 1);
  let report: Report;

  beforeAll(() => {
    report = inNeovim(unsafe.join('\n'));
    expect(report.problem).toBeUndefined();
  });

  test('the unsafe touch is marked at what is touched', () => {
    const { range, message } = firstFinding(unsafe.join('\n'), 'live-touch');
    expect(unsafe[range.start.line]?.slice(range.start.character, range.end.character)).toMatch(
      /stage-1|K30/,
    );
    // 1 is an error in Neovim's count.
    expect(report.findings).toContainEqual(
      expect.objectContaining({
        rule: 'live-touch',
        severity: 1,
        line: range.start.line,
        column: range.start.character,
        lastLine: range.end.line,
        lastColumn: range.end.character,
        message,
      }),
    );
  });

  test('hover and hints say the windows that the program prints', () => {
    const windows = printedWindows(unsafe.join('\n'));
    expect(windows.length).toBeGreaterThan(3);
    const first = windows.find(({ line }) => line === report.hover.line);
    expect(first?.printed).toBeTruthy();
    expect(report.hover.text).toContain(first?.printed);
    for (const { line, printed } of windows) {
      const there = report.hints.filter(({ position }) => position.line === line);
      expect(there.map(({ label }) => label).join(' ')).toContain(`reads ${printed}`);
    }
  });

  test('the fix puts the step back, and no error is left', () => {
    const count = (text: readonly string[]): number => text.filter((line) => line.startsWith(off)).length;
    expect(report.fix).toBeTruthy();
    expect(count(report.text)).toBe(count(lines));
  });

  test('the server says nothing out of turn and ends in order', () => {
    expect(report.messages).toEqual([]);
    expect(report.exitCode).toBe(0);
  });
});

function inNeovim(text: string): Report {
  const folder = mkdtempSync(join(tmpdir(), 'neovim-'));
  try {
    const file = join(folder, 'unsafe.procedure.yaml');
    const reportFile = join(folder, 'report.json');
    writeFileSync(file, text);
    const script = fileURLToPath(new URL('session.lua', import.meta.url));
    const { status, stderr } = spawnSync(
      'nvim',
      ['--headless', '-u', 'NONE', '-i', 'NONE', '-n', '-S', script],
      {
        encoding: 'utf8',
        timeout: 100_000,
        env: {
          ...process.env,
          HOME: folder,
          XDG_STATE_HOME: folder,
          XDG_CACHE_HOME: folder,
          OHMWRIGHT_FILE: file,
          OHMWRIGHT_REPORT: reportFile,
          OHMWRIGHT_NODE: process.execPath,
          OHMWRIGHT_PROGRAM: program,
        },
      },
    );
    try {
      return JSON.parse(readFileSync(reportFile, 'utf8')) as Report;
    } catch (error) {
      throw new Error(`Neovim ended with ${status ?? 'no status'}: ${stderr}`, { cause: error });
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
