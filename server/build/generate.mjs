// Writes what is generated from the definitions of the format: the JSON Schema and the validators compiled from it.
// With `--to FOLDER` it writes below that folder instead, so that a test can compare.
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import Ajv2020 from 'ajv/dist/2020.js';
import standalone from 'ajv/dist/standalone/index.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const at = process.argv.indexOf('--to');
const to = at === -1 ? root : resolve(process.argv[at + 1]);

const work = await mkdtemp(join(root, 'node_modules', '.generate-'));
try {
  const bundled = join(work, 'format.mjs');
  await build({
    stdin: {
      contents: `export * from './json-schema.ts'; export { definitions } from './definitions.ts';`,
      resolveDir: join(root, 'server/src/format'),
      loader: 'ts',
    },
    bundle: true,
    format: 'esm',
    platform: 'node',
    outfile: bundled,
    logLevel: 'error',
  });
  const format = await import(pathToFileURL(bundled).href);
  const schema = format.procedureSchema();
  await write('schemas/procedure.schema.json', `${JSON.stringify(schema, null, 2)}\n`);
  await write('schemas/parts.schema.json', `${JSON.stringify(format.partsSchema(), null, 2)}\n`);
  await write('server/src/text/generated/validators.js', await validators(schema, format));
} finally {
  await rm(work, { recursive: true, force: true });
}

/** One validator for each definition, compiled, with no need of ajv at run time. */
async function validators(schema, { schemaId, shellSchemas, definitions }) {
  const ajv = new Ajv2020.default({ allErrors: true, messages: false, code: { source: true, esm: true } });
  ajv.addSchema(withoutWords(schema));
  const names = Object.keys(definitions);
  const exported = {};
  const shells = shellSchemas();
  for (const name of names) {
    const own = name in shells ? withoutWords(shells[name]) : { $ref: `${schemaId}#/$defs/${name}` };
    ajv.addSchema({ ...own, $id: name });
    exported[identifier(name)] = name;
  }
  const code = standalone.default(ajv, exported);
  const map = names.map((name) => `${JSON.stringify(name)}: v.${identifier(name)}`).join(', ');
  await writeFile(join(work, 'code.mjs'), code);
  const result = await build({
    stdin: {
      contents: `import * as v from './code.mjs'; export const validators = { ${map} };`,
      resolveDir: work,
      loader: 'js',
    },
    bundle: true,
    format: 'esm',
    minify: true,
    write: false,
    logLevel: 'error',
  });
  const banner = '// Generated from server/src/format by server/build/generate.mjs. Do not edit.\n';
  return banner + result.outputFiles[0].text.replaceAll(/\/\/ .*\n/g, '');
}

/** The schema without what is written for people only: it would be copied into the code. */
function withoutWords(schema) {
  if (Array.isArray(schema)) return schema.map(withoutWords);
  if (typeof schema !== 'object' || schema === null) return schema;
  const kept = Object.entries(schema).filter(([key, value]) => {
    if (key === 'examples' || key === 'x-expected') return false;
    return !(key === 'description' && typeof value === 'string');
  });
  return Object.fromEntries(kept.map(([key, value]) => [key, withoutWords(value)]));
}

function identifier(name) {
  return `of_${name.replaceAll('-', '_')}`;
}

async function write(path, content) {
  const file = join(to, path);
  await mkdir(dirname(file), { recursive: true });
  await writeFile(file, content);
}
