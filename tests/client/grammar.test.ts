import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { beforeAll, expect, test } from 'vitest';
import { createOnigScanner, createOnigString, loadWASM } from 'vscode-oniguruma';
import type { IGrammar } from 'vscode-textmate';
import { INITIAL, parseRawGrammar, Registry } from 'vscode-textmate';
import manifest from '../../package.json' with { type: 'json' };
import { verbs } from '../../server/src/format/words.ts';
import { describeWith } from '../needs.ts';
import { lacksEditor } from '../workbench/paths.ts';

/*
 * The grammar on top of the YAML grammar that the editor brings, read by the tokeniser and the regular expressions that
 * the editor uses. The YAML grammar is not ours and is taken from the editor that the workbench tests install.
 */

const root = fileURLToPath(new URL('../..', import.meta.url));
const yamlGrammars = `${root}.cache/workbench/node_modules/code-server/lib/vscode/extensions/yaml/syntaxes/`;
const [own] = manifest.contributes.grammars;
const ownPath = `${root}${own?.path ?? ''}`;
const scope = own?.scopeName ?? '';

describeWith(existsSync(yamlGrammars) ? null : lacksEditor, 'the colours of a procedure', specs);

test('the grammar knows the verbs of the format, and no others', () => {
  const grammar = JSON.parse(readFileSync(ownPath, 'utf8')) as {
    readonly repository: { readonly verb: { readonly match: string } };
  };
  const [, words = ''] = /\(\?:([a-z|-]+)\)/.exec(grammar.repository.verb.match) ?? [];
  expect(words.split('|').sort()).toEqual([...verbs].sort());
});

function specs(): void {
  let grammar: IGrammar;
  beforeAll(async () => {
    grammar = await loadGrammar();
  });

  /** What our grammar says of each piece of the last line, innermost scope, without our name. */
  const pieces = (...lines: readonly string[]): readonly (readonly [string, string])[] => {
    let state = INITIAL;
    let last: readonly (readonly [string, string])[] = [];
    for (const line of lines) {
      const { tokens, ruleStack } = grammar.tokenizeLine(line, state);
      state = ruleStack;
      last = tokens.flatMap(({ startIndex, endIndex, scopes }) => {
        const inner = scopes.at(-1) ?? '';
        const text = line.slice(startIndex, endIndex);
        return inner.endsWith('.ohmwright-procedure') && inner !== scope && text.trim() !== ''
          ? [[text, inner.replace('.ohmwright-procedure', '')] as const]
          : [];
      });
    }
    return last;
  };

  test.each(verbs)('`%s` at the start of a step is a verb', (verb) => {
    expect(pieces('steps:', `  - ${verb}: x`)[0]).toEqual([verb, 'keyword.control.verb']);
  });

  test('a word of the steps is no verb elsewhere', () => {
    expect(pieces('sources:', '  battery:', '    wait: none')).toEqual([]);
    expect(pieces('steps:', '  - do: |', '      Lift it.', '      - read: no')).toEqual([]);
  });

  const number = 'constant.numeric';
  const unit = 'keyword.other.unit';
  const operator = 'keyword.operator';
  const word = 'keyword.operator.word';

  // The shapes of quantities that the format knows.
  test.each([
    ['2.0 Ω', [number, unit]],
    ['3 min', [number, unit]],
    ['0.5 mm²', [number, unit]],
    ['AWG 20', [word, number]],
    ['-40 °C', [number, unit]],
    ['2.0 Ω ± 0.3 Ω', [number, unit, operator, number, unit]],
    ['2.0 ohm +/- 10 %', [number, unit, operator, number, unit]],
    ['1.7..2.3 Ω', [number, operator, number, unit]],
    ['1.7..2.0..2.3 Ω', [number, operator, number, operator, number, unit]],
    ['below 1.0 Ω', [word, number, unit]],
    ['3 % + 0.1 Ω', [number, unit, operator, number, unit]],
    ['0.8 % + 3 digits', [number, unit, operator, number, unit]],
  ])('`%s` is a quantity, in a block and in braces', (quantity, expected) => {
    const block = pieces('parts:', '  a:', `    resistance: ${quantity} # why`);
    expect(block.map(([, kind]) => kind)).toEqual(expected);
    expect(block.map(([text]) => text).join('')).toBe(quantity.replaceAll(' ', ''));
    expect(pieces('parts:', `  a: { kind: series, resistance: ${quantity} }`)).toEqual(block);
  });

  test('figures in a sentence stay text', () => {
    for (const text of ['3 connectors back', '3 m long', 'Wait 3 min'])
      expect(pieces(`purpose: ${text}`)).toEqual([]);
  });

  test('headings, ids and places have colours of their own', () => {
    expect(pieces('steps:', '  - section: Make safe # really')).toEqual([
      ['section', 'keyword.other.section'],
      ['Make safe', 'entity.name.section'],
    ]);
    expect(pieces('steps:', '  - fit: bench-lamp', '    at: K30.monitor')).toEqual([
      ['K30', 'variable.other'],
      ['.', 'punctuation.accessor'],
      ['monitor', 'variable.other.property'],
    ]);
    expect(pieces('steps:', '  - read: [a-loop, b-loop]').slice(1)).toEqual([
      ['a-loop', 'variable.other'],
      ['b-loop', 'variable.other'],
    ]);
    expect(pieces('steps:', '  - ignition: off', '    id: make-safe')).toEqual([
      ['make-safe', 'entity.name.label'],
    ]);
    expect(pieces('steps:', '  - go: make-safe')[1]).toEqual(['make-safe', 'variable.other.label']);
    expect(pieces('steps:', '  - ignition: off')[1]).toEqual(['off', 'constant.language']);
    expect(pieces('steps:', '  - wait: 3 min', '    danger: Keep away.')).toEqual([
      ['danger', 'keyword.other.notice'],
    ]);
    expect(pieces('steps:', '  - wait: 3 min', '    notice: The clock is lost.')).toEqual([
      ['notice', 'keyword.other.notice'],
    ]);
  });
}

async function loadGrammar(): Promise<IGrammar> {
  const wasm = createRequire(import.meta.url).resolve('vscode-oniguruma/release/onig.wasm');
  await loadWASM(readFileSync(wasm));
  const paths = new Map([[scope, ownPath]]);
  for (const name of readdirSync(yamlGrammars)) {
    const path = `${yamlGrammars}${name}`;
    paths.set(parseRawGrammar(readFileSync(path, 'utf8'), path).scopeName, path);
  }
  const registry = new Registry({
    onigLib: Promise.resolve({ createOnigScanner, createOnigString }),
    loadGrammar: (name) => {
      const path = paths.get(name);
      return Promise.resolve(path === undefined ? null : parseRawGrammar(readFileSync(path, 'utf8'), path));
    },
  });
  const grammar = await registry.loadGrammar(scope);
  if (grammar === null) throw new Error(`there is no grammar ${scope}`);
  return grammar;
}
