import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

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

const browsers = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** OHMWRIGHT_CHROMIUM names a browser that stands elsewhere. */
export const browser = [process.env.OHMWRIGHT_CHROMIUM ?? '', ...browsers].find((path) => existsSync(path));

/** What has to be there before a person can sit down at the workbench, and how one gets it; empty where all is there. */
export function missing(): readonly string[] {
  return [
    ...(browser === undefined ? ['Chromium is not installed'] : []),
    ...(existsSync(editorServer) ? [] : ['the editor is not installed: `node tests/workbench/install.mjs`']),
    ...(existsSync(packed) ? [] : ['the extension is not packed: `npm run package`']),
  ];
}

function versionOfProject(): string {
  const manifest: unknown = JSON.parse(readFileSync(inProject('package.json'), 'utf8'));
  if (typeof manifest === 'object' && manifest !== null && 'version' in manifest)
    return String(manifest.version);
  throw new Error('package.json has no version');
}
