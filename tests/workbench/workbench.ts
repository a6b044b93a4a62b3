import type { ChildProcess } from 'node:child_process';
import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { chromium } from 'playwright-core';
import { browser as browserPath, editorServer } from './paths.ts';

/** A running editor with a folder open in it, as a person has it before them. */
export interface Workbench {
  readonly page: Page;
  /** The folder that is open. */
  readonly folder: string;
  /** What the editor's own server and the browser's console said, to look into after a failure. */
  readonly log: readonly string[];
  readonly stop: () => Promise<void>;
}

/** Nothing on the screen but the work: no welcome, no hints for newcomers, nothing that asks the network. */
const calm: Readonly<Record<string, unknown>> = {
  'breadcrumbs.enabled': false,
  'editor.fontSize': 14,
  'editor.inlayHints.fontSize': 13,
  'editor.minimap.enabled': false,
  'editor.occurrencesHighlight': 'off',
  'editor.cursorBlinking': 'solid',
  'extensions.autoCheckUpdates': false,
  'extensions.ignoreRecommendations': true,
  'files.autoSave': 'off',
  'files.simpleDialog.enable': true,
  'git.enabled': false,
  'security.workspace.trust.enabled': false,
  'telemetry.telemetryLevel': 'off',
  'update.mode': 'none',
  'window.autoDetectColorScheme': true,
  'window.commandCenter': false,
  'workbench.preferredDarkColorTheme': 'Default Dark Modern',
  'workbench.preferredLightColorTheme': 'Default Light Modern',
  'workbench.activityBar.location': 'hidden',
  'workbench.enableExperiments': false,
  'workbench.layoutControl.enabled': false,
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
};

const chromiumFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/**
 * Installs the packed extension as a person does, starts the editor and opens a folder that holds `files` (names with
 * texts) in it. Whatever it leaves on the disk is removed by `stop`.
 */
export async function startWorkbench(
  extension: string,
  files: Readonly<Record<string, string>>,
): Promise<Workbench> {
  const home = mkdtempSync(join(tmpdir(), 'workbench-'));
  const folder = join(home, 'workshop');
  const settingsFolder = join(home, 'data/data/User');
  mkdirSync(folder);
  mkdirSync(settingsFolder, { recursive: true });
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  writeFileSync(join(settingsFolder, 'settings.json'), JSON.stringify(calm, undefined, 2));
  const log: string[] = [];
  const places = [
    '--extensions-dir',
    join(home, 'extensions'),
    '--server-data-dir',
    join(home, 'data'),
    '--accept-server-license-terms',
  ];
  install(extension, places, log);

  const port = await freePort();
  const server = spawn(
    process.execPath,
    [
      editorServer,
      ...['--host', '127.0.0.1', '--port', String(port), '--without-connection-token'],
      ...['--telemetry-level', 'off', '--disable-workspace-trust', '--enable-smoke-test-driver'],
      ...places,
    ],
    { stdio: ['ignore', 'pipe', 'pipe'], env: { ...process.env, HOME: home } },
  );
  let chrome: Browser | undefined;
  const stop = async (): Promise<void> => {
    await chrome?.close();
    await ended(server);
    rmSync(home, { recursive: true, force: true, maxRetries: 5 });
  };
  try {
    await listening(server, log);
    chrome = await chromium.launch({
      executablePath: browserPath ?? '',
      headless: true,
      args: chromiumFlags,
    });
    const context = await chrome.newContext({
      viewport: { width: 1280, height: 800 },
      locale: 'en-GB',
      colorScheme: 'dark',
    });
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    const page = await context.newPage();
    page.setDefaultTimeout(30_000);
    page.on('console', (message) => {
      if (message.type() === 'error' || message.type() === 'warning') note(log, `browser: ${message.text()}`);
    });
    await page.goto(`http://127.0.0.1:${port}/?folder=${encodeURIComponent(folder)}`);
    await page.locator('.monaco-workbench').waitFor();
    return { page, folder, log, stop };
  } catch (error) {
    await stop();
    throw new Error(`The workbench did not start.\n${log.slice(-20).join('\n')}`, { cause: error });
  }
}

/** Keeps the first line of what was said, unless it only says that the optional native modules are not there. */
function note(log: string[], said: string): void {
  const [line = ''] = said.trim().split('\n');
  if (line !== '' && !/bindings file|vsda|watchdog|status of 404|ServiceWorker/.test(line)) log.push(line);
}

/** By the editor's own command, so that a package it would refuse is refused here too. */
function install(extension: string, places: readonly string[], log: string[]): void {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [editorServer, '--install-extension', extension, ...places],
    { encoding: 'utf8' },
  );
  note(log, stdout);
  if (status === 0 && stdout.includes('successfully installed')) return;
  throw new Error(
    `The editor did not install ${extension} (status ${status ?? 'none'}):\n${stdout}\n${stderr}`,
  );
}

function listening(server: ChildProcess, log: string[]): Promise<void> {
  return new Promise((resolve, reject) => {
    for (const stream of [server.stdout, server.stderr]) {
      stream?.on('data', (data: Buffer) => {
        note(log, String(data));
        if (String(data).includes('Extension host agent listening')) resolve();
      });
    }
    server.once('exit', (code) => {
      reject(new Error(`The editor's server ended with status ${code ?? 'none'}`));
    });
  });
}

function ended(server: ChildProcess): Promise<void> {
  if (server.exitCode !== null || server.signalCode !== null) return Promise.resolve();
  return new Promise((resolve) => {
    const insist = setTimeout(() => server.kill('SIGKILL'), 5000);
    server.once('exit', () => {
      clearTimeout(insist);
      resolve();
    });
    server.kill();
  });
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => {
        if (typeof address === 'object' && address !== null) resolve(address.port);
        else reject(new Error('no free port'));
      });
    });
  });
}
