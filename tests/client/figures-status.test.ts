import { beforeEach, describe, expect, test, vi } from 'vitest';
import { activate, api, clear, close, documentAt, file, seen, type } from './editor-stand-in.ts';

vi.mock('vscode', () => api);
const { figuresStatus } = await import('../../client/src/status/figures-status.ts');

const uri = file('/vans/brake.procedure.yaml');
const figures = (version: number) => ({
  uri: String(uri),
  version,
  errors: 0,
  warnings: 0,
  steps: 81,
  readings: 7,
  complete: true,
});
const sound = '81 steps, 7 readings, 0 errors';

describe('the status of the procedure that is edited', () => {
  beforeEach(clear);

  test('is that of its present text, and until that is known it is being checked', () => {
    const status = figuresStatus();
    const document = documentAt(uri);
    activate(document);
    expect(seen.status).toMatchObject({ text: 'Checking', busy: true });
    status.figures(figures(1));
    expect(seen.status).toMatchObject({ text: sound, busy: false });
    type(uri, document);
    expect(seen.status).toMatchObject({ text: 'Checking', busy: true });
    // What comes late is about the text before.
    status.figures(figures(1));
    expect(seen.status).toMatchObject({ text: 'Checking', busy: true });
    status.figures(figures(2));
    expect(seen.status.text).toBe(sound);
  });

  test('is not known while a file that it uses has changed, nor once it was closed', () => {
    const status = figuresStatus();
    activate(documentAt(uri));
    status.figures(figures(1));
    status.stale({ uris: ['file:/other'] });
    expect(seen.status.text).toBe(sound);
    status.stale({ uris: ['file:/other', String(uri)] });
    expect(seen.status.text).toBe('Checking');
    status.figures(figures(1));
    close(uri);
    expect(seen.status.text).toBe('Checking');
  });

  test('says as an error that it was not checked, because that failed or there is no server', () => {
    const status = figuresStatus();
    activate(documentAt(uri));
    status.figures(figures(1));
    status.failure({ uri: String(uri) });
    expect(seen.status).toMatchObject({ text: 'Not checked', severity: 2, busy: false });
    status.figures(figures(1));
    expect(seen.status).toMatchObject({ text: sound, severity: 0 });
    status.running(false);
    expect(seen.status).toMatchObject({ text: 'Not checked', severity: 2, busy: false });
    status.running(true);
    expect(seen.status).toMatchObject({ text: 'Checking', severity: 0, busy: true });
  });

  test('says where a bound was met that not all was checked', () => {
    const status = figuresStatus();
    activate(documentAt(uri));
    status.figures({ ...figures(1), complete: false });
    expect(seen.status).toMatchObject({ text: `${sound}, not all checked`, severity: 1 });
  });
});
