import type { Uri } from 'vscode';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { CardParams, CardResult } from '../../server/src/protocol/messages.ts';
import type { Panel } from './editor-stand-in.ts';
import {
  api,
  clear,
  close,
  file,
  listeners,
  panels,
  rename,
  type,
  Uri as StandInUri,
} from './editor-stand-in.ts';

vi.mock('vscode', () => api);
const { cardPreviews } = await import('../../client/src/preview/previews.ts');

const brake = file('/vans/brake.procedure.yaml');
const belt = file('/vans/belt.procedure.yaml');
const asUri = (uri: unknown): Uri => uri as Uri;

/** A server that answers when the test says so. */
function slowServer() {
  const asked: { readonly params: CardParams; readonly answer: (result: CardResult) => void }[] = [];
  return {
    asked,
    card: (params: CardParams) =>
      new Promise<CardResult>((answer) => {
        asked.push({ params, answer });
      }),
    template: () => Promise.reject(new Error('not asked for')),
    stop: () => Promise.resolve(),
  };
}

const page = (html: string, draft = false): CardResult => ({ kind: 'card', html, draft });
const settle = (milliseconds = 0): Promise<unknown> => vi.advanceTimersByTimeAsync(milliseconds);

function only(): Panel {
  const [panel, ...more] = panels;
  if (panel === undefined || more.length > 0) throw new Error(`${panels.length} panels`);
  return panel;
}

describe('the card beside the text', () => {
  beforeEach(() => {
    clear();
    vi.useFakeTimers();
  });
  afterEach(() => vi.useRealTimers());

  test('runs no script, takes no form and reads no file', () => {
    cardPreviews(slowServer()).show(asUri(brake));
    expect(only().options).toMatchObject({
      enableScripts: false,
      enableForms: false,
      localResourceRoots: [],
    });
  });

  test('is made once for a burst of keys, and not for the keys of another file', async () => {
    const server = slowServer();
    cardPreviews(server).show(asUri(brake));
    await settle();
    expect(server.asked.map(({ params }) => [params.face, params.draft])).toEqual([['editor', true]]);
    for (let key = 0; key < 5; key += 1) {
      type(brake);
      await settle(100);
    }
    type(belt);
    await settle(1000);
    expect(server.asked).toHaveLength(2);
  });

  test('shows the last text, also where an earlier one is answered later', async () => {
    const server = slowServer();
    cardPreviews(server).show(asUri(brake));
    await settle();
    type(brake);
    await settle(1000);
    server.asked[1]?.answer(page('<p>new</p>'));
    await settle();
    server.asked[0]?.answer(page('<p>old</p>'));
    await settle();
    expect(only().webview.html).toBe('<p>new</p>');
  });

  test('says in its title that it is a draft, and no longer when it is none', async () => {
    const server = slowServer();
    cardPreviews(server).show(asUri(brake));
    await settle();
    server.asked[0]?.answer(page('<p>1</p>', true));
    await settle();
    expect(only().title).toBe('Draft card: brake');
    type(brake);
    await settle(1000);
    server.asked[1]?.answer(page('<p>2</p>'));
    await settle();
    expect(only().title).toBe('Card: brake');
  });

  test('says why where there is none, as text', async () => {
    const server = slowServer();
    const previews = cardPreviews(server);
    previews.show(asUri(file('/missing/<b>.procedure.yaml')));
    await settle();
    expect(only().webview.html).toContain('no &lt;/missing/&lt;b&gt;.procedure.yaml&gt;');
    expect(only().webview.html).toContain(`content="default-src 'none'"`);
    previews.show(asUri(brake));
    await settle();
    server.asked[0]?.answer({ kind: 'unknown-document' });
    await settle();
    expect(panels[1]?.webview.html).toContain('not open as an Ohmwright procedure');
    previews.show(asUri(belt));
    await settle();
    server.asked[1]?.answer({ kind: 'failed' });
    await settle();
    expect(panels[2]?.webview.html).toContain('the language server failed while it made it');
  });

  test('comes to the front where it is open already; closed, it hears and shows nothing more', async () => {
    const server = slowServer();
    const previews = cardPreviews(server);
    previews.show(asUri(brake));
    previews.show(asUri(brake));
    const first = only();
    expect(first.reveal).toHaveBeenCalledTimes(1);
    expect(String(previews.active())).toBe(String(brake));
    await settle();
    type(brake);
    first.dispose();
    server.asked[0]?.answer(page('<p>late</p>'));
    await settle(1000);
    expect([first.webview.html, listeners(), server.asked.length]).toEqual(['', 0, 1]);
    expect(previews.active()).toBeUndefined();
    previews.show(asUri(brake));
    expect(panels).toHaveLength(2);
  });

  test('is made again where a file that the procedure uses has changed, and for no other procedure', async () => {
    const server = slowServer();
    const previews = cardPreviews(server);
    previews.show(asUri(brake));
    await settle();
    previews.renew([String(belt)]);
    await settle(1000);
    expect(server.asked).toHaveLength(1);
    previews.renew([String(belt), String(brake)]);
    await settle(1000);
    server.asked[1]?.answer(page('<p>with other parts</p>'));
    await settle();
    expect(only().webview.html).toBe('<p>with other parts</p>');
  });

  test('is made again from the disk where the procedure is closed', async () => {
    const server = slowServer();
    cardPreviews(server).show(asUri(brake));
    await settle();
    server.asked[0]?.answer(page('<p>never saved</p>'));
    await settle();
    close(belt);
    await settle(1000);
    expect(server.asked).toHaveLength(1);
    close(brake);
    await settle(1000);
    server.asked[1]?.answer(page('<p>on disk</p>'));
    await settle();
    expect(only().webview.html).toBe('<p>on disk</p>');
  });

  test('goes where the procedure was never saved and is closed', async () => {
    const server = slowServer();
    const unsaved = new StandInUri('untitled', 'Untitled-1');
    cardPreviews(server).show(asUri(unsaved));
    await settle();
    const disposed = vi.spyOn(only(), 'dispose');
    close(unsaved);
    expect(disposed).toHaveBeenCalledTimes(1);
    expect(listeners()).toBe(0);
  });

  test('follows a procedure that has another name, also by its folder, and says where one is gone', async () => {
    const server = slowServer();
    const previews = cardPreviews(server);
    previews.show(asUri(brake));
    await settle();
    rename(file('/vans/brake'), file('/vans/other'));
    close(brake);
    rename(brake, file('/vans/handbrake.procedure.yaml'));
    rename(file('/vans'), file('/cars'));
    await settle(1000);
    expect(server.asked.slice(1).map(({ params }) => params.uri)).toEqual([
      'file:/cars/handbrake.procedure.yaml',
    ]);
    server.asked[1]?.answer(page('<p>moved</p>'));
    await settle();
    expect([only().title, only().webview.html]).toEqual(['Card: handbrake', '<p>moved</p>']);
    type(brake);
    await settle(1000);
    expect(server.asked).toHaveLength(2);
    rename(file('/cars/handbrake.procedure.yaml'), file('/missing/handbrake.procedure.yaml'));
    await settle(1000);
    expect(only().webview.html).toContain('The card cannot be shown');
  });
});
