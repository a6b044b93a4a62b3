// Puts a real editor into a folder that git ignores: the workbench, the extension host and their server, which the
// package `code-server` carries. Run it again at will: what stands is kept.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const version = '4.100.3';
const folder = fileURLToPath(new URL('../../.cache/workbench', import.meta.url));
const inner = join(folder, 'node_modules/code-server/lib/vscode');
const done = join(folder, `installed-${version}`);

if (!existsSync(done)) {
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'package.json'), '{ "private": true }\n');
  // The scripts would compile native modules and fetch programs. Without them only terminals and log files are missing.
  install(folder, '--ignore-scripts', `code-server@${version}`);
  install(inner, '--ignore-scripts', '--omit=dev');
  writeFileSync(done, '');
}
linkRipgrep();
console.log(`workbench ${version} stands in ${folder}`);

function install(at, ...words) {
  const { status } = spawnSync('npm', ['install', '--no-audit', '--no-fund', '--loglevel=error', ...words], {
    cwd: at,
    stdio: 'inherit',
  });
  if (status === 0) return;
  console.error(`npm install ${words.join(' ')} ended with status ${status} in ${at}`);
  process.exit(1);
}

/** The search for files in a workspace runs ripgrep, whose own package fetches it in the scripts left out above. */
function linkRipgrep() {
  const system = (process.env.PATH ?? '')
    .split(':')
    .map((place) => join(place, 'rg'))
    .find((place) => existsSync(place));
  const place = join(inner, 'node_modules/@vscode/ripgrep/bin/rg');
  if (system === undefined || statSync(place, { throwIfNoEntry: false }) !== undefined) return;
  mkdirSync(dirname(place), { recursive: true });
  rmSync(place, { force: true });
  symlinkSync(system, place);
}
