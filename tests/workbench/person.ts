import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Frame, Locator, Page } from 'playwright-core';
import type { Workbench } from './workbench.ts';

/*
 * What a person does at the workbench and what they see of it: keys, and text on the screen. Nothing here asks the
 * extension.
 */

export async function openFile({ page }: Workbench, name: string): Promise<void> {
  await askWith(page, 'Control+P', name);
  await chosenRow(page).filter({ hasText: name }).waitFor();
  await page.keyboard.press('Enter');
  await page.locator('.tab.active').filter({ hasText: name }).waitFor();
  await editor({ page }).locator('.view-line').first().waitFor();
}

/** The row that Enter would take: the list is filtered while one types, and others stand there first. */
function chosenRow(page: Page): Locator {
  return page.locator('.quick-input-list .monaco-list-row.focused');
}

/** Runs a command by its whole name in the command palette. */
export async function runCommand({ page }: Pick<Workbench, 'page'>, name: string): Promise<void> {
  await askWith(page, 'F1', `>${name}`);
  await chosenRow(page).filter({ hasText: name }).waitFor();
  await page.keyboard.press('Enter');
}

/** What stands in the open box at the top of the window; empty where there is none. */
export async function boxText({ page }: Workbench): Promise<string> {
  const box = page.locator(boxInput);
  return (await box.count()) === 0 ? '' : box.inputValue();
}

/** Opens the box at the top of the window and types into it. A card that is being painted takes the keyboard: press again. */
async function askWith(page: Page, key: string, text: string): Promise<void> {
  const box = page.locator(boxInput);
  for (let left = 5; ; left -= 1) {
    await page.keyboard.press(key);
    try {
      await box.waitFor({ timeout: 4000 });
      await box.fill(text, { timeout: 4000 });
      return;
    } catch (error) {
      if (left === 0) throw error;
    }
  }
}

const boxInput = '.quick-input-widget:visible .quick-input-box input';

/** Puts the cursor into a line and a column, counted from 1, which also brings it onto the screen. */
export async function goTo({ page }: Workbench, line: number, column = 1): Promise<void> {
  await askWith(page, 'Control+G', `:${line}:${column}`);
  await page.keyboard.press('Enter');
  await page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
}

export async function deleteLine({ page }: Workbench): Promise<void> {
  await page.keyboard.press('Control+Shift+K');
}

/** Closes all that is open and throws away what was not saved. */
export async function closeEverything({ page }: Workbench): Promise<void> {
  for (let press = 0; press < 3; press += 1) await page.keyboard.press('Escape');
  const tabs = page.locator('.editor-group-container .tab');
  for (let open = await tabs.count(); open > 0; open = await tabs.count()) {
    await runCommand({ page }, 'View: Revert and Close Editor');
    await see(
      { page },
      'one tab less',
      () => tabs.count(),
      (now) => now < open,
    );
  }
  if (await page.locator('.part.panel').isVisible()) await runCommand({ page }, 'View: Hide Panel');
}

/** The editor that holds the keyboard, or the only one. */
export function editor({ page }: Pick<Workbench, 'page'>): Locator {
  return page.locator('.editor-group-container.active .monaco-editor').first();
}

/** The text of the lines on the screen as it is drawn, hints within it included. */
export async function linesOnScreen(workbench: Workbench): Promise<readonly string[]> {
  const lines = await editor(workbench).locator('.view-line').allTextContents();
  return lines.map((line) => line.replaceAll('\u00a0', ' '));
}

/** Waits until `look` gives what `fits`, and gives that; says what was seen last where it never does. */
export async function see<Seen>(
  { page }: Pick<Workbench, 'page'>,
  what: string,
  look: () => Promise<Seen>,
  fits: (seen: Seen) => boolean,
  seconds = 30,
): Promise<Seen> {
  const end = Date.now() + seconds * 1000;
  for (;;) {
    const seen = await look();
    if (fits(seen)) return seen;
    if (Date.now() > end)
      throw new Error(`Not seen within ${seconds} s: ${what}. Last: ${JSON.stringify(seen)}`);
    await page.waitForTimeout(150);
  }
}

/** Opens the panel of problems, where it is not open, and gives its rows; `No problems` gives none. */
export async function problems({ page }: Workbench): Promise<readonly string[]> {
  const panel = page.locator('.markers-panel');
  if (!(await panel.isVisible())) {
    await runCommand({ page }, 'Problems: Focus on Problems View');
    await panel.waitFor();
  }
  // The files stand above what is wrong in them, and the places that belong to a problem below it.
  const rows = await panel.locator('.monaco-list-row[aria-level="2"]').allTextContents();
  return rows.map((row) => row.replaceAll('\u00a0', ' '));
}

/** The name of the language of the active editor, as it stands in the status bar. */
export async function languageOf({ page }: Workbench): Promise<string> {
  const entry = page.locator('#status\\.editor\\.mode');
  await entry.waitFor();
  return (await entry.innerText()).trim();
}

export async function saveFile({ page }: Workbench): Promise<void> {
  await page.keyboard.press('Control+S');
  await page.locator('.tab.active.dirty').waitFor({ state: 'detached' });
}

/** The text of a file in the folder; empty where there is no such file yet. */
export function onDisk({ folder }: Workbench, name: string): string {
  const path = join(folder, name);
  return existsSync(path) ? readFileSync(path, 'utf8') : '';
}

/** The texts of all previews. */
export async function previews({ page }: Pick<Workbench, 'page'>): Promise<readonly string[]> {
  const texts: string[] = [];
  for (const frame of previewFrames(page)) {
    // A frame may go while it is looked at.
    const text = await frame
      .locator('body')
      .innerText({ timeout: 2000 })
      .catch(() => '');
    if (text.trim() !== '') texts.push(text);
  }
  return texts;
}

/** A preview stands in a frame within a frame. */
export function previewFrames(page: Page): readonly Frame[] {
  return page.frames().filter((frame) => {
    const outer = frame.parentFrame();
    return outer !== null && outer !== page.mainFrame();
  });
}
