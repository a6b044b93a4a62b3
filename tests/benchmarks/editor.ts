import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { compileFunction } from 'node:vm';
import { getLanguageService } from 'yaml-language-server';
import type { LanguageSettings } from 'yaml-language-server';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { inMemory } from '../protocol/in-memory.ts';
import { largeDraft } from './large-draft.ts';
import { median, ms, timed } from './measure.ts';

/*
 * How long a keystroke takes until diagnostics and hints are there, beside a general YAML language server that checks the
 * same text against the same schema and knows nothing of circuits.
 */

const uri = 'file:///benchmark.procedure.yaml';

/** Where somebody types. */
const typing = 'Write the codes';

interface Keystroke {
  readonly diagnostics: number;
  readonly both: number;
}

export async function measureEditor(): Promise<void> {
  console.log('\nA keystroke in the editor, milliseconds (middle of the later two thirds)');
  console.log('  steps   to diagnostics   and hints   schema check of a general YAML server   ratio');
  for (const [wanted, keystrokes] of [
    [200, 60],
    [1000, 30],
    [5000, 15],
  ] as const) {
    const text = largeDraft(wanted);
    const own = await ownServer(text, keystrokes);
    const other = await schemaAlone(text, keystrokes);
    console.log(
      `${String(wanted).padStart(7)}          ${ms(own.diagnostics)}     ${ms(own.both)}                                   ${ms(other)}   ${(own.both / other).toFixed(2).padStart(5)}`,
    );
  }
}

async function ownServer(text: string, keystrokes: number): Promise<Keystroke> {
  const { client, close } = await inMemory({ textDocument: { diagnostic: {} } });
  await client.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'ohmwright-procedure', version: 1, text },
  });
  const at = TextDocument.create(uri, '', 1, text).positionAt(text.lastIndexOf(typing));
  const range = { start: { line: 0, character: 0 }, end: { line: 100_000, character: 0 } };
  const samples: Keystroke[] = [];
  for (let version = 2; version < keystrokes + 2; version++) {
    const start = performance.now();
    const contentChanges = [{ range: { start: at, end: at }, text: 'x' }];
    await client.sendNotification('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges,
    });
    await client.sendRequest('textDocument/diagnostic', { textDocument: { uri } });
    const diagnostics = performance.now() - start;
    await client.sendRequest('textDocument/inlayHint', { textDocument: { uri }, range });
    samples.push({ diagnostics, both: performance.now() - start });
  }
  close();
  const late = samples.slice(Math.floor(keystrokes / 3));
  return {
    diagnostics: median(late.map((one) => one.diagnostics)),
    both: median(late.map((one) => one.both)),
  };
}

async function schemaAlone(text: string, keystrokes: number): Promise<number> {
  const schema = JSON.parse(readFileSync('schemas/procedure.schema.json', 'utf8')) as object;
  const service = getLanguageService({
    schemaRequestService: () => Promise.reject(new Error('nothing is fetched')),
    workspaceContext: { resolveRelativePath: (path: string) => path },
  });
  service.configure({
    validate: true,
    customTags: [],
    yamlVersion: '1.2',
    schemas: [{ uri: 'schema://procedure', fileMatch: ['*.procedure.yaml'], schema }],
  } as unknown as LanguageSettings);
  const at = text.lastIndexOf(typing);
  const times: number[] = [];
  for (let version = 1; version <= keystrokes; version++) {
    const changed = text.slice(0, at) + 'x'.repeat(version) + text.slice(at);
    const document = TextDocument.create(uri, 'yaml', version, changed);
    const start = performance.now();
    await service.doValidation(document, false);
    times.push(performance.now() - start);
  }
  return median(times.slice(Math.floor(keystrokes / 3)));
}

/** Loads the extension's bundle with an editor that is not there, and activates it. */
export function measureActivation(): void {
  const require = createRequire(`${process.cwd()}/package.json`);
  const file = `${process.cwd()}/dist/extension.cjs`;
  const times = Array.from({ length: 15 }, () => {
    const editor = everything();
    const ask = (name: string): unknown => (name === 'vscode' ? editor : require(name));
    const context = { subscriptions: [], asAbsolutePath: (path: string) => path, extensionUri: editor };
    return timed(() => {
      const load = compileFunction(readFileSync(file, 'utf8'), ['require', 'module', 'exports']) as Load;
      const module: Module = { exports: {} };
      load(ask, module, module.exports);
      module.exports.activate?.(context);
    });
  });
  console.log('\nActivation of the extension, without the editor around it');
  console.log(`  milliseconds ${ms(median(times))}  (the first, cold: ${ms(times[0] ?? NaN).trim()})`);
}

interface Module {
  exports: { activate?: (context: unknown) => void };
}

type Load = (require: (name: string) => unknown, module: Module, exports: Module['exports']) => void;

/** Answers every question with itself: an editor of nothing. */
function everything(): unknown {
  const answer = (): unknown => proxy;
  const proxy: unknown = new Proxy(answer, {
    get: (_target, name) => (name === 'then' ? undefined : name === Symbol.toPrimitive ? () => '' : proxy),
    set: () => true,
    apply: () => proxy,
    construct: () => answer,
  });
  return proxy;
}
