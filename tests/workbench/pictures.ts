import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { screenshots } from './paths.ts';
import type { Workbench } from './workbench.ts';

const marks = { dark: '.monaco-workbench.vs-dark', light: '.monaco-workbench.vs:not(.vs-dark)' } as const;

export type Theme = keyof typeof marks;

/** Pictures of the screen as it is, for people to look at; the editor is in the dark theme before and after. */
export async function takePictures(
  { page }: Workbench,
  name: string,
  wanted: readonly Theme[] = ['dark', 'light'],
): Promise<void> {
  mkdirSync(screenshots, { recursive: true });
  for (const theme of wanted) {
    await wear(page, theme);
    // Colours fade in, and a preview paints after the window around it.
    await page.waitForTimeout(700);
    await page.screenshot({ path: join(screenshots, `${name}-${theme}.png`) });
  }
  await wear(page, 'dark');
}

/** The editor follows the system, and the browser says what the system has. */
export async function wear(page: Page, theme: Theme): Promise<void> {
  await page.emulateMedia({ colorScheme: theme });
  await page.locator(marks[theme]).waitFor();
}

/** One picture of what a failed spec had before it; its path. */
export async function takeFailure({ page }: Workbench, name: string): Promise<string> {
  mkdirSync(screenshots, { recursive: true });
  const path = join(screenshots, `failed-${name.replaceAll(/[^a-z0-9]+/gi, '-').slice(0, 60)}.png`);
  await page.screenshot({ path });
  return path;
}
