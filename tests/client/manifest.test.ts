import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import manifest from '../../package.json' with { type: 'json' };
import { endings } from '../../server/src/format/file-kinds.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const client = join(root, 'client/src');
const sources = readdirSync(client, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
  .map((entry) => readFileSync(join(entry.parentPath, entry.name), 'utf8'));

const { contributes } = manifest;

describe('the manifest of the extension', () => {
  test('contributes the commands that are registered, and no others', () => {
    const registered = sources.flatMap((text) =>
      [...text.matchAll(/registerCommand\(\s*'([^']+)'/g)].map(([, name]) => name ?? ''),
    );
    expect(registered.sort()).toEqual(contributes.commands.map(({ command }) => command).sort());
    for (const { title, category } of contributes.commands) {
      expect(category).toBe('Ohmwright');
      expect(title).toMatch(/^[A-Z]/);
    }
  });

  test('shows in menus only what it contributes', () => {
    const known = new Set(contributes.commands.map(({ command }) => command));
    for (const entries of Object.values(contributes.menus))
      for (const { command } of entries) expect(known).toContain(command);
  });

  test('describes every setting', () => {
    for (const [name, setting] of Object.entries(contributes.configuration.properties)) {
      expect(name).toMatch(/^ohmwright\./);
      const described = 'description' in setting ? setting.description : setting.markdownDescription;
      expect(described.length).toBeGreaterThan(20);
    }
  });

  test('knows every ending that is read, and no other', () => {
    const all = Object.values(endings).flat();
    const [language] = contributes.languages;
    expect(language?.extensions).toEqual(all);
    const patternsOf = (schemas: readonly { readonly fileMatch: readonly string[] }[]): readonly string[] =>
      schemas.flatMap(({ fileMatch }) => fileMatch);
    expect(patternsOf(contributes.yamlValidation)).toEqual(all.map((ending) => `*${ending}`));
    expect(patternsOf(contributes.jsonValidation)).toEqual(
      all.filter((ending) => ending.endsWith('.json')).map((ending) => `*${ending}`),
    );
  });

  test('names only files that are there', () => {
    const paths = [
      manifest.icon,
      ...contributes.languages.flatMap(({ configuration, icon }) => [configuration, icon.light, icon.dark]),
      ...contributes.grammars.map(({ path }) => path),
      ...contributes.jsonValidation.map(({ url }) => url),
      ...contributes.yamlValidation.map(({ url }) => url),
    ];
    for (const path of paths) expect([path, existsSync(join(root, path))]).toEqual([path, true]);
  });

  test('is truthful about trust and virtual workspaces: nothing is run, nothing is read but open documents', () => {
    expect(manifest.capabilities).toEqual({
      untrustedWorkspaces: { supported: true },
      virtualWorkspaces: true,
    });
    for (const text of sources) {
      expect(text).not.toMatch(/child_process|node:(fs|http|https|net)\b|\bfetch\(|workspace\.fs\.readFile/);
    }
  });

  test('starts the extension only when a procedure or one of its commands asks for it', () => {
    expect(manifest.activationEvents).toEqual([]);
  });

  test('needs no editor newer than the types it was written against', () => {
    const [, least] = /\^(\d+\.\d+)/.exec(manifest.engines.vscode) ?? [];
    expect(manifest.devDependencies['@types/vscode']).toContain(least);
  });
});

describe('the client', () => {
  test('imports of the server only the names and types of its messages, and two functions of which there shall be one', () => {
    const imported = sources.flatMap((text) =>
      [...text.matchAll(/from '([^']*server\/[^']*)'/g)].map(([, path]) => path ?? ''),
    );
    expect(imported.length).toBeGreaterThan(0);
    for (const path of imported)
      expect(path).toMatch(/server\/src\/(?:protocol\/messages|host\/write-file|text\/printable)\.ts$/);
  });
});
