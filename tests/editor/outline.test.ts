import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { DocumentSymbol } from 'vscode-languageserver-types';
import { outline } from '../../server/src/editor/outline.ts';
import { template } from '../../server/src/editor/template.ts';
import { opened } from './opened.ts';

function names(symbols: readonly DocumentSymbol[], depth = 0): string[] {
  return symbols.flatMap(({ name, children = [] }) => [
    `${'  '.repeat(depth)}${name}`,
    ...names(children, depth + 1),
  ]);
}

describe('the outline', () => {
  test('shows the circuit, and the steps below their headings', () => {
    const shown = names(outline(opened(template)));
    expect(shown.slice(0, 2)).toEqual(['sources', '  battery']);
    expect(shown).toContain('  stage-1-loop');
    const from = shown.indexOf('steps');
    expect(shown.slice(from, from + 6)).toEqual([
      'steps',
      '  Confirm',
      '    1 ignition on',
      '    2 read-codes control-unit',
      '  Make safe',
      '    3 ignition off',
    ]);
    expect(shown).toContain('    13 stop: The loop is not sound. Ask the workshop lead.  faulty');
  });

  test('names a place inside of its parent for every symbol', () => {
    const check = (symbols: readonly DocumentSymbol[]): void => {
      for (const { range, selectionRange, children = [] } of symbols) {
        expect(selectionRange.start.line).toBeGreaterThanOrEqual(range.start.line);
        expect(selectionRange.end.line).toBeLessThanOrEqual(range.end.line);
        for (const child of children) {
          expect(child.range.start.line).toBeGreaterThanOrEqual(range.start.line);
          expect(child.range.end.line).toBeLessThanOrEqual(range.end.line);
        }
        check(children);
      }
    };
    check(outline(opened(template)));
  });

  test('shows the network, regulated supplies, and what is entered', () => {
    const shippedNames = (name: string): string[] =>
      names(
        outline(
          opened(readFileSync(new URL(`../../procedures/${name}.procedure.yaml`, import.meta.url), 'utf8')),
        ),
      );
    const bus = shippedNames('two-wire-bus');
    expect(bus.slice(0, 3)).toEqual(['sources', '  battery', '  bus-bias']);
    const from = bus.indexOf('network');
    expect(bus.slice(from, from + 2)).toEqual([
      'network',
      '  front-termination from front-high to front-low',
    ]);
    expect(bus.slice(from).indexOf('steps')).toBe(19);
    expect(shippedNames('coolant-sensor').slice(0, 2)).toEqual(['entries', '  coolant']);
  });

  test('of a text that is broken shows what could be read', () => {
    expect(names(outline(opened(template.replace('steps:\n', 'steps:\n  - unplug K30\n'))))).toContain(
      '  1 not readable',
    );
    expect(outline(opened(''))).toEqual([]);
  });
});
