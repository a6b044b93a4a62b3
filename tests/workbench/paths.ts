import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { onPath } from '../needs.ts';

const root = new URL('../../', import.meta.url);

/** The path of a file of the project. */
export function inProject(path: string): string {
  return fileURLToPath(new URL(path, root));
}

export const editorServer = inProject(
  '.cache/workbench/node_modules/code-server/lib/vscode/out/server-main.js',
);

export const screenshots = inProject('.cache/screenshots');

/** The packed extension, as `npm run package` leaves it. */
export const packed = inProject(`dist/ohmwright-${versionOfProject()}.vsix`);

export const program = inProject('dist/cli.js');

export const shipped = inProject('tests/fixtures/driver-airbag-written-out.procedure.yaml');

/** OHMWRIGHT_CHROMIUM names a browser that the path does not lead to. */
export const browser =
  process.env.OHMWRIGHT_CHROMIUM ??
  onPath('chromium') ??
  onPath('chromium-browser') ??
  onPath('google-chrome');

export const lacksBrowser = browser === undefined ? 'Chromium is not installed' : null;

/** Said where the editor is missing, with how one gets it. */
export const lacksEditor = 'the editor is not installed: `node tests/workbench/install.mjs`';

/** What has to be there before a person can sit down at the workbench; null where all is there. */
export function lacksWorkbench(): string | null {
  const lacking = [
    ...(lacksBrowser === null ? [] : [lacksBrowser]),
    ...(existsSync(editorServer) ? [] : [lacksEditor]),
    ...(existsSync(packed) ? [] : ['the extension is not packed: `npm run package`']),
  ];
  return lacking.length === 0 ? null : lacking.join('; ');
}

function versionOfProject(): string {
  const manifest: unknown = JSON.parse(readFileSync(inProject('package.json'), 'utf8'));
  if (typeof manifest === 'object' && manifest !== null && 'version' in manifest)
    return String(manifest.version);
  throw new Error('package.json has no version');
}
