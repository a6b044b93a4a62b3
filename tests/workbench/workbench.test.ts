import { readFileSync } from 'node:fs';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { describeWith } from '../needs.ts';
import { contrasts } from './contrast.ts';
import { inProject, lacksWorkbench, packed, shipped } from './paths.ts';
import {
  boxText,
  closeEverything,
  deleteLine,
  editor,
  goTo,
  linesOnScreen,
  onDisk,
  openFile,
  previewFrames,
  previews,
  problems,
  runCommand,
  saveFile,
  see,
} from './person.ts';
import { takeFailure, takePictures, wear } from './pictures.ts';
import type { PrintedFinding } from './program.ts';
import { firstFinding, printedWindows } from './program.ts';
import type { Workbench } from './workbench.ts';
import { startWorkbench } from './workbench.ts';

/*
 * The packed extension in a real editor, by keys and by what stands on the screen. Each spec has a file of its own.
 */

const off = '  - disconnect: battery';
const text = readFileSync(shipped, 'utf8');
const lines = text.split('\n');
const unsafe = lines.toSpliced(lines.indexOf(off), 1);
const unsafeText = unsafe.join('\n');
const title = lineAfter('title: ');
const count = (all: string): number => all.split(`${off}\n`).length - 1;

/** The shipped procedure with routines: its circuit and they in a parts file, its head and its steps in the procedure. */
const withRoutines = readFileSync(inProject('procedures/driver-airbag-resistance.procedure.yaml'), 'utf8');
const shared = /\nsources:\n[\s\S]*(?=\nsteps:\n)/.exec(withRoutines)?.[0] ?? '';
const partsText = `format: 1\n${shared}`;
const callsText = withRoutines.replace(shared, '\n').replace('\ntitle:', '\nuses: [rig.parts.yaml]\ntitle:');

const files = {
  'calls.procedure.yaml': callsText,
  'rig.parts.yaml': partsText,
  'hints.procedure.yaml': text,
  'delete.procedure.yaml': text,
  'mend.procedure.yaml': unsafeText,
  'card.procedure.yaml': text,
  'read.procedure.yaml': text,
  'export.procedure.yaml': text,
  'draft.procedure.yaml': unsafeText,
  'figures.procedure.yaml': unsafeText,
};

describeWith(lacksWorkbench(), 'a person at the workbench', specs);

function specs(): void {
  let workbench: Workbench;
  beforeAll(async () => {
    workbench = await startWorkbench(packed, files);
  });
  afterEach(() => closeEverything(workbench));
  afterAll(() => workbench.stop());

  /** Where it fails, the message says where the picture of the screen is. */
  const spec = (name: string, body: () => Promise<void>): void => {
    test(name, async () => {
      try {
        await body();
      } catch (error) {
        const picture = await takeFailure(workbench, name);
        const said = error instanceof Error ? error.message : String(error);
        const log = workbench.log.slice(-15).join('\n');
        throw new Error(`${said}\n\nThe screen: ${picture}\n\nLast in the log:\n${log}`, { cause: error });
      }
    });
  };

  const goToFinding = ({ range: { start } }: PrintedFinding): Promise<void> =>
    goTo(workbench, start.line + 1, start.character + 2);

  const noProblems = (): Promise<readonly string[]> =>
    see(
      workbench,
      'no problems',
      () => problems(workbench),
      (rows) => rows.length === 0,
    );

  spec('sees at each reading what it should show', async () => {
    await openFile(workbench, 'hints.procedure.yaml');
    const windows = printedWindows(text);
    expect(windows.length).toBeGreaterThan(3);
    for (const { line, printed } of windows) {
      await goTo(workbench, line + 1);
      await see(
        workbench,
        `reads ${printed}`,
        () => linesOnScreen(workbench),
        (seen) =>
          seen.some((each) => each.startsWith(lines[line] ?? '?') && each.includes(`reads ${printed}`)),
      );
    }
    await goTo(workbench, lines.indexOf('  - section: Lamp in place of the stage') + 1);
    await takePictures(workbench, 'hints');
  });

  spec(
    'deletes the step that takes the power off, and is told at the step that it makes unsafe',
    async () => {
      const touch = firstFinding(unsafeText, 'live-touch');
      await openFile(workbench, 'delete.procedure.yaml');
      await noProblems();
      await goTo(workbench, lines.indexOf(off) + 1);
      await deleteLine(workbench);
      const rows = await see(
        workbench,
        'live-touch among the problems',
        () => problems(workbench),
        (seen) => seen.some((row) => row.includes('live-touch')),
      );
      expect(rows.find((row) => row.includes('live-touch'))).toContain(beginning(touch.message));
      await goToFinding(touch);
      await see(
        workbench,
        'a red line under a word',
        () => editor(workbench).locator('.squiggly-error').count(),
        (seen) => seen > 0,
      );
      await workbench.page.keyboard.press('Control+K');
      await workbench.page.keyboard.press('Control+I');
      const hover = workbench.page
        .locator('.monaco-hover:visible')
        .filter({ hasText: beginning(touch.message) });
      await hover.first().waitFor();
      // The name of the rule leads to what it means.
      await hover.getByRole('link', { name: 'live-touch' }).first().waitFor();
      await takePictures(workbench, 'error');
    },
  );

  spec(
    'is told at the calls when a routine in a parts file is shortened, and again when it is mended',
    async () => {
      await openFile(workbench, 'calls.procedure.yaml');
      await noProblems();
      await openFile(workbench, 'rig.parts.yaml');
      await goTo(workbench, partsText.split('\n').findIndex((line) => line.includes('- wait: 3 min')) + 1);
      await deleteLine(workbench);
      const rows = await see(
        workbench,
        'short-wait among the problems of the procedure',
        () => problems(workbench),
        (seen) => seen.some((row) => row.includes('short-wait')),
      );
      expect(rows.some((row) => row.includes('rig.parts.yaml'))).toBe(false);
      await takePictures(workbench, 'routine', ['light']);
      await editor(workbench).click();
      await workbench.page.keyboard.press('Control+Z');
      await noProblems();
    },
  );

  spec('asks where the width of a window comes from', async () => {
    await openFile(workbench, 'hints.procedure.yaml');
    const [reading] = printedWindows(text);
    const line = reading?.line ?? 0;
    await goTo(workbench, line + 1, (lines[line] ?? '').indexOf('read') + 2);
    await workbench.page.keyboard.press('Control+K');
    await workbench.page.keyboard.press('Control+I');
    const hover = workbench.page.locator('.monaco-hover:visible').filter({ hasText: 'Its width comes from' });
    await hover.first().waitFor();
    await takePictures(workbench, 'width');
  });

  spec('takes the fix that is offered first, and the step is there again', async () => {
    const touch = firstFinding(unsafeText, 'live-touch');
    await openFile(workbench, 'mend.procedure.yaml');
    await see(
      workbench,
      'live-touch among the problems',
      () => problems(workbench),
      (seen) => seen.some((row) => row.includes('live-touch')),
    );
    await goToFinding(touch);
    await workbench.page.keyboard.press('Control+.');
    await workbench.page.locator('.action-widget .monaco-list-row.action').first().waitFor();
    await takePictures(workbench, 'fix', ['dark']);
    await workbench.page.keyboard.press('Enter');
    const errors = (): Promise<number> => editor(workbench).locator('.squiggly-error').count();
    await see(workbench, 'no red line', errors, (seen) => seen === 0);
    await see(
      workbench,
      'no live-touch among the problems',
      () => problems(workbench),
      (seen) => !seen.some((row) => row.includes('live-touch')),
    );
    await goTo(workbench, lines.indexOf(off) + 1);
    await saveFile(workbench);
    expect(count(onDisk(workbench, 'mend.procedure.yaml'))).toBe(count(text));
  });

  spec('opens the card beside the procedure', async () => {
    await openFile(workbench, 'card.procedure.yaml');
    await runCommand(workbench, 'Ohmwright: Open Card to the Side');
    const cards = await see(
      workbench,
      'the title on a card',
      () => previews(workbench),
      (seen) => seen.some((each) => each.includes(title)),
    );
    for (const { printed } of printedWindows(text)) expect(cards.join(' ')).toContain(printed);
    await takePictures(workbench, 'card');
  });

  spec('can read every word of the card, in the dark theme and in the light one', async () => {
    await openFile(workbench, 'read.procedure.yaml');
    await runCommand(workbench, 'Ohmwright: Open Card to the Side');
    for (const theme of ['dark', 'light'] as const) {
      await wear(workbench.page, theme);
      const weakest = await see(
        workbench,
        `text of at least 4.5 : 1 (WCAG 2.1, 1.4.3, level AA) in the ${theme} theme`,
        async () => (await Promise.all(previewFrames(workbench.page).map(contrasts))).flat(),
        (seen) => seen.length > 50 && seen.every(({ ratio }) => ratio >= 4.5),
        10,
      );
      expect(weakest.map(({ text }) => text)).toContain(title);
    }
    for (const frame of previewFrames(workbench.page))
      await frame.locator('figure').first().scrollIntoViewIfNeeded();
    await takePictures(workbench, 'drawing');
  });

  spec('sees that a card is only a draft while there are errors', async () => {
    await openFile(workbench, 'draft.procedure.yaml');
    await runCommand(workbench, 'Ohmwright: Open Card to the Side');
    await see(
      workbench,
      'the word draft on a card',
      () => previews(workbench),
      (seen) => seen.some((each) => each.includes(title) && /draft/i.test(each)),
    );
    await takePictures(workbench, 'draft', ['light']);
  });

  spec('sees the card follow a parts file that is edited and not saved', async () => {
    await openFile(workbench, 'calls.procedure.yaml');
    await runCommand(workbench, 'Ohmwright: Open Card to the Side');
    const card = async (isDraft: boolean): Promise<void> => {
      await see(
        workbench,
        isDraft ? 'the word draft on the card' : 'the card without the word draft',
        () => previews(workbench),
        (seen) => seen.some((each) => each.includes('K30') && /draft/i.test(each) === isDraft),
      );
    };
    await card(false);
    await openFile(workbench, 'rig.parts.yaml');
    await goTo(workbench, partsText.split('\n').findIndex((line) => line.includes('- wait: 3 min')) + 1);
    await deleteLine(workbench);
    await card(true);
    await editor(workbench).click();
    await workbench.page.keyboard.press('Control+Z');
    await card(false);
  });

  spec('exports the card to a file', async () => {
    await openFile(workbench, 'export.procedure.yaml');
    await runCommand(workbench, 'Ohmwright: Export Card...');
    // The box at the top of the window asks where to, and proposes a name beside the procedure.
    const proposed = `${workbench.folder}/export.card.html`;
    await see(
      workbench,
      'a place that is proposed',
      () => boxText(workbench),
      (seen) => seen === proposed,
    );
    await workbench.page.keyboard.press('Enter');
    const html = await see(
      workbench,
      'the card on the disk',
      () => Promise.resolve(onDisk(workbench, 'export.card.html')),
      (seen) => seen.includes('</html>'),
    );
    expect(html).toContain(title);
    for (const { printed } of printedWindows(text)) expect(html).toContain(printed);
  });

  spec('sees at the foot of the window what the procedure comes to', async () => {
    await openFile(workbench, 'figures.procedure.yaml');
    const steps = lines.filter((line) => /^ {2}- (?!section:)/.test(line)).length - 1;
    const item = workbench.page.locator('#status\\.languageStatus');
    await see(
      workbench,
      'the figures in the language status',
      async () => {
        await item.hover();
        return workbench.page.locator('.monaco-hover:visible').allInnerTexts();
      },
      (shown) =>
        shown.some((each) => new RegExp(`${steps} steps, \\d+ readings, [1-9]\\d* errors?`).test(each)),
    );
    await takePictures(workbench, 'figures', ['dark']);
  });

  spec('begins a new procedure, of which the values alone are wrong', async () => {
    await runCommand(workbench, 'Ohmwright: New Procedure');
    await see(
      workbench,
      'a procedure in a new editor',
      () => linesOnScreen(workbench),
      (seen) => seen.some((each) => each.startsWith('format: 1')),
    );
    // The hints show that it has been read through; before that, no problems would mean nothing.
    await workbench.page.keyboard.press('Control+End');
    await see(
      workbench,
      'a window in the new procedure',
      () => linesOnScreen(workbench),
      (seen) => seen.some((each) => /reads .*\.\./.test(each)),
    );
    await see(
      workbench,
      'that its values are examples, and nothing else',
      () => problems(workbench),
      (rows) => rows.length > 0 && rows.every((row) => /invented|TODO/.test(row)),
    );
    await takePictures(workbench, 'new', ['light']);
  });
}

/** So much of a message as stands on the screen in one piece. */
function beginning(message: string): string {
  return message.slice(0, 40);
}

function lineAfter(start: string): string {
  const found = lines.find((line) => line.startsWith(start));
  if (found === undefined) throw new Error(`the shipped file has no ${start}`);
  return found.slice(start.length);
}
