import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { guarded } from '../../server/src/cli/terminal.ts';
import { writeTextFile } from '../../server/src/host/write-file.ts';
import { unseenIn } from '../../server/src/model/printable.ts';
import { fakeTerminal, ran } from './fake-terminal.ts';

/* Names of files and texts of authors that would steer a terminal, or read otherwise than they are. */

/** Clears the screen, sets the title of the window, ends the line, turns the rest round, hides. */
const hostile = '\u001b[2J\u001b]0;x\u0007\n\u202eevil\u061c\u200b';
const shown = /\[U\+001B\]\[2J\[U\+001B\]\]0;x\[U\+0007\] \[U\+202E\]evil\[U\+061C\]\[U\+200B\]/;

const text = readFileSync(new URL('../../procedures/coolant-sensor.procedure.yaml', import.meta.url), 'utf8');
/** In double quotes YAML has an escape for each of them. */
const quoted = `"${Array.from(hostile, (one) => `\\u${one.charCodeAt(0).toString(16).padStart(4, '0')}`).join('')}"`;
const authored = text
  .replace(/^title: .*$/m, `title: ${quoted}`)
  .replace(/^ {4}(why|note|warning): .*$/gm, `    $1: ${quoted}`)
  .replace(/^( +)ask: .*$/gm, `$1ask: ${quoted}`);

let folder = '';
let file = '';
beforeAll(() => {
  folder = join(mkdtempSync(join(tmpdir(), 'hostile-')), hostile);
  mkdirSync(join(folder, 'empty'), { recursive: true });
  file = join(folder, `${hostile}.procedure.yaml`);
  writeFileSync(file, authored);
  writeFileSync(
    join(folder, 'broken.procedure.yaml'),
    `format: 1\ntitle: x\n${quoted}: ${quoted}\nsteps:\n  - do: ${quoted}\n  - unplug: ${quoted}\n`,
  );
});
afterAll(() => {
  rmSync(join(folder, '..'), { recursive: true, force: true });
});

/** What colours put around words of our own, and no more of it. */
const colours = /\u001b\[(?:1|2|22|31|32|33|36|39)m/g;

describe('nothing that is not seen comes to a terminal', () => {
  test.each([
    ['check FILE', () => ['check', file]],
    ['check FOLDER', () => ['check', folder]],
    ['check as JSON', () => ['check', folder, '--format', 'json']],
    ['check as SARIF', () => ['check', folder, '--format', 'sarif']],
    ['check of what is not there', () => ['check', join(folder, `${hostile}.yaml`), file]],
    ['check of an empty folder', () => ['check', join(folder, 'empty')]],
    ['windows', () => ['windows', file, '--why']],
    ['windows as JSON', () => ['windows', file, '--format', 'json']],
    ['windows of an unknown step', () => ['windows', file, '--step', hostile]],
    ['card', () => ['card', file, '--draft', '-o', join(folder, `${hostile}.html`), '--date', hostile]],
    ['card that is refused', () => ['card', join(folder, 'broken.procedure.yaml'), '-o', 'x.html']],
    ['card that cannot be written', () => ['card', file, '--draft', '-o', join(folder, hostile, 'x.html')]],
    ['card of another ending', () => ['card', file, '-o', hostile]],
    ['paper', () => ['card', file, '-o', 'x.html', '--paper', hostile]],
    ['rules', () => ['rules', hostile]],
    ['an unknown command', () => [hostile]],
    ['an unknown option', () => ['check', `--${hostile}`]],
    ['an unknown format', () => ['check', file, '--format', hostile]],
  ])('%s', (_name, words) => {
    for (const colour of [false, true]) {
      const { out, err } = ran(words(), '', { colours: colour, writeFile: writeTextFile });
      expect(out + err).not.toBe('');
      expect(unseenIn(out.replace(colours, '') + err)).toEqual([]);
      // One line for each message.
      for (const line of err.split('\n').slice(0, -1)) expect(line).toMatch(/^ohmwright: /);
    }
  });
});

test('what a command does not clean itself is cleaned on its way; colours of our own pass', () => {
  for (const colour of [false, true]) {
    const { terminal, seen } = fakeTerminal({ colours: colour });
    const { out, err } = guarded(terminal);
    out('\u001b[31merror\u001b[39m \u001b[2J\u202e\n');
    err('\u001b[31m\u061c\n');
    const painted = colour ? '\u001b[31merror\u001b[39m' : '[U+001B][31merror[U+001B][39m';
    expect(seen()).toMatchObject({ out: `${painted} [U+001B][2J[U+202E]\n`, err: '[U+001B][31m[U+061C]\n' });
  }
});

test('what is there can be read', () => {
  expect(ran(['card', file, '--draft', '-o', join(folder, `${hostile}.html`)]).out).toMatch(shown);
  expect(ran(['check', join(folder, hostile)]).err).toMatch(shown);
  expect(ran(['check', file]).out).toMatch(shown);
});

test('programs get names and texts as they are', () => {
  const { files } = JSON.parse(ran(['check', file, '--format', 'json']).out) as {
    files: readonly { file: string }[];
  };
  expect(files.map((one) => one.file)).toEqual([file]);
});

test('the card prints them as what they are, with the name of the file', () => {
  const to = join(folder, 'card.html');
  ran(['card', file, '--draft', '-o', to], '', { writeFile: writeTextFile });
  const card = readFileSync(to, 'utf8');
  expect(unseenIn(card)).toEqual([]);
  expect(card.match(/\[U\+202E\]evil\[U\+061C\]/g)?.length).toBeGreaterThan(4);
  expect(card).toMatch(/<th scope="row">File<\/th><td><bdi>\[U\+001B\]/);
  expect(readdirSync(folder)).toContain('card.html');
});

test('the place that is marked stays below what it means', () => {
  const line = 'title: "\u202ewrong" extra';
  const { out } = ran(['check', '-', '--name', 'a.procedure.yaml'], `format: 1\n${line}\n`);
  const [, shownLine = '', marks = ''] = /^ {2}2 \| (.*)\n {4}\| (.*)$/m.exec(out) ?? [];
  expect(shownLine).toBe('title: "[U+202E]wrong" extra');
  expect(shownLine.slice(marks.indexOf('^'), marks.lastIndexOf('^') + 1)).toBe('extra');
});
