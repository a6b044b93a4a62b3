// The licences of all that is bundled. They travel with it: every one of them asks for that.
import { readdir, readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { root } from './bundles.mjs';

/** Names under which packages put their licence and the notices of what they hold themselves. */
const named = /^(?:licen[cs]e|copying|notice|third-?party-?notices?)\b/i;

/** Of esbuild's metafiles: one text. A package without a licence stops the build. */
export async function noticesOf(metafiles) {
  const packages = await Promise.all(foldersIn(metafiles).map(packageIn));
  const sections = packages
    .toSorted((one, other) => (one.title < other.title ? -1 : 1))
    .map(({ title, licence, texts }) => [`${title}\n${licence}`, ...texts].join('\n\n'));
  const head = 'Ohmwright is bundled with the packages below. The licence of each follows its name.';
  return `${[head, ...sections].join(`\n\n${'='.repeat(80)}\n\n`)}\n`;
}

/** The folders of the packages that bytes of a bundle come from, each once. */
function foldersIn(metafiles) {
  const outputs = metafiles.flatMap((metafile) => Object.values(metafile.outputs));
  const inputs = outputs.flatMap(({ inputs }) =>
    Object.entries(inputs).flatMap(([path, { bytesInOutput }]) => (bytesInOutput > 0 ? [path] : [])),
  );
  const folders = inputs.flatMap((path) => /^.*node_modules\/(?:@[^/]+\/)?[^/]+/.exec(path)?.[0] ?? []);
  return [...new Set(folders)].map((folder) => resolve(root, folder));
}

async function packageIn(folder) {
  const { name, version, license } = JSON.parse(await readFile(join(folder, 'package.json'), 'utf8'));
  const files = (await readdir(folder)).filter((file) => named.test(file)).toSorted();
  if (!files.some((file) => /^(?:licen[cs]e|copying)/i.test(file)))
    throw new Error(`${name} ${version} is bundled and has no licence beside it`);
  const texts = await Promise.all(files.map((file) => readFile(join(folder, file), 'utf8')));
  return {
    title: `${name} ${version}`,
    licence: license ?? '',
    texts: texts.map((text) => text.replaceAll('\r\n', '\n').trim()),
  };
}
