import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Uri } from 'vscode';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import type { CardParams, CardResult } from '../../server/src/protocol/messages.ts';
import { answers, api, clear, elsewhere, file, seen, Uri as StandInUri } from './editor-stand-in.ts';

vi.mock('vscode', () => api);
const { exportCard } = await import('../../client/src/commands/export-card.ts');

const procedure = file('/vans/brake.procedure.yaml');

/** Runs the command against a server that gives these answers in turn; what it was asked. */
async function run(uri: StandInUri, ...results: readonly CardResult[]): Promise<readonly CardParams[]> {
  const asked: CardParams[] = [];
  const rest = [...results];
  const server = {
    card: (params: CardParams) => {
      asked.push(params);
      const next = rest.shift();
      return next === undefined ? Promise.reject(new Error('asked too often')) : Promise.resolve(next);
    },
    template: () => Promise.reject(new Error('not asked for')),
    stop: () => Promise.resolve(),
  };
  await exportCard(server, uri as unknown as Uri);
  return asked;
}

const card: CardResult = { kind: 'card', html: '<p>3 Ω</p>', draft: false };
const draft: CardResult = { kind: 'card', html: '<p>DRAFT</p>', draft: true };
const refused: CardResult = { kind: 'refused', errors: 2 };

describe('exporting a card', () => {
  beforeEach(clear);

  test('asks for the face of the paper, proposes a name beside the procedure and writes there', async () => {
    answers.save = elsewhere('/desk/card.html');
    const asked = await run(procedure, card);
    expect(asked).toEqual([
      {
        uri: 'file:/vans/brake.procedure.yaml',
        face: 'paper',
        date: expect.stringMatching(/^\d{4}-\d{2}-\d{2}$/) as unknown,
        draft: false,
      },
    ]);
    expect(seen.proposed?.path).toBe('/vans/brake.card.html');
    expect([...seen.written]).toEqual([['/desk/card.html', '<p>3 Ω</p>']]);
    expect(seen.messages).toEqual(['Card written to /desk/card.html. Print it from a browser.']);
  });

  test('writes nothing where the dialog is left', async () => {
    await run(procedure, card);
    expect([seen.written.size, seen.messages]).toEqual([0, []]);
  });

  test('says how many errors there are, and leads to them', async () => {
    answers.buttons.push('Show Problems');
    await run(procedure, refused);
    expect(seen.messages).toEqual(['The card is refused: there are 2 errors.']);
    expect(seen.commands).toEqual(['workbench.actions.view.problems']);
    expect(seen.written.size).toBe(0);
  });

  test('writes a draft only where the user asks for one, and calls it one', async () => {
    await run(procedure, refused);
    expect([seen.written.size, seen.proposed]).toEqual([0, undefined]);
    answers.buttons.push('Export as Draft');
    answers.save = elsewhere('/desk/card.html');
    const asked = await run(procedure, refused, draft);
    expect(asked.map((params) => params.draft)).toEqual([false, true]);
    expect([...seen.written.values()]).toEqual(['<p>DRAFT</p>']);
    expect(seen.messages.at(-1)).toMatch(/^Draft of the card written/);
  });

  test('says why where not even a draft can be had', async () => {
    answers.buttons.push('Export as Draft');
    await run(procedure, { kind: 'refused', errors: 0 }, { kind: 'refused', errors: 0 });
    expect(seen.messages).toEqual(Array(2).fill('The card is refused: not everything could be checked.'));
    await run(procedure, { kind: 'unknown-document' });
    expect(seen.messages.at(-1)).toMatch(/not open as an Ohmwright procedure/);
    await run(procedure, { kind: 'failed' });
    expect(seen.messages.at(-1)).toMatch(/language server failed .* output channel Ohmwright says why/);
  });

  test.each([
    ['/locked/card.html', 'the disk is locked'],
    ['/full/card.html', 'the disk is full'],
    ['/fixed/card.html', 'Files cannot be renamed here'],
    ['/desk/folder.html', 'it is a folder'],
    ['/desk/link.html', 'it is a link: choose the file that it leads to'],
  ])('says that %s could not be written, and leaves an earlier card as it was', async (path, why) => {
    seen.written.set(path, 'earlier');
    answers.save = elsewhere(path);
    await run(procedure, card);
    expect(seen.messages).toEqual([`The card was not written to ${path}: ${why}.`]);
    expect([...seen.written]).toEqual([[path, 'earlier']]);
  });

  test('takes the place of an earlier card', async () => {
    seen.written.set('/desk/card.html', 'earlier');
    answers.save = elsewhere('/desk/card.html');
    await run(procedure, card);
    expect([...seen.written]).toEqual([['/desk/card.html', '<p>3 Ω</p>']]);
  });

  test('on the disk: writes there, says what is wrong, and leaves nothing beside', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'export-'));
    try {
      const path = join(folder, 'card.html');
      answers.save = file(path);
      await run(procedure, card);
      expect(readFileSync(path, 'utf8')).toBe('<p>3 Ω</p>');
      answers.save = file(folder);
      await run(procedure, card);
      expect(seen.messages.at(-1)).toBe(`The card was not written to ${folder}: it is a folder.`);
      expect(readdirSync(folder)).toEqual(['card.html']);
      expect(seen.written.size).toBe(0);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

  test('makes no link of the name of a file, and shows what it hides', async () => {
    answers.save = elsewhere('/desk/[free](command:evil)\u202elmth.html');
    await run(procedure, card);
    answers.save = elsewhere('/locked/[free](command:evil)\u202elmth.html');
    await run(procedure, card);
    const name = '[free] (command:evil)[U+202E]lmth.html';
    expect(seen.messages).toEqual([
      `Card written to /desk/${name}. Print it from a browser.`,
      `The card was not written to /locked/${name}: the disk is locked.`,
    ]);
  });

  test('proposes the first folder for a procedure that was never saved', async () => {
    const unsaved = new StandInUri('untitled', 'Untitled-1');
    await run(unsaved, card);
    expect(seen.proposed).toBeUndefined();
    api.workspace.workspaceFolders = [{ uri: file('/vans') }];
    await run(unsaved, card);
    expect(seen.proposed?.path).toBe('/vans/Untitled-1.card.html');
  });
});
