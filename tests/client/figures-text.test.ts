import { expect, test } from 'vitest';
import { figuresText } from '../../client/src/status/figures-text.ts';

const figures = {
  uri: 'file:/a.procedure.yaml',
  version: 1,
  errors: 0,
  warnings: 0,
  steps: 81,
  readings: 7,
  complete: true,
};

test('the figures are counted in words, and graded by the worst that was found', () => {
  expect(figuresText(figures)).toEqual({
    text: '81 steps, 7 readings, 0 errors',
    detail: '',
    grade: 'Information',
  });
  expect(figuresText({ ...figures, steps: 1, readings: 1, errors: 1, warnings: 2 })).toEqual({
    text: '1 step, 1 reading, 1 error, 2 warnings',
    detail: '',
    grade: 'Error',
  });
  expect(figuresText({ ...figures, warnings: 1 }).grade).toBe('Warning');
});

test('what was not checked whole is not shown as sound', () => {
  expect(figuresText({ ...figures, complete: false })).toMatchObject({
    text: '81 steps, 7 readings, 0 errors, not all checked',
    detail: 'Not everything could be checked.',
    grade: 'Warning',
  });
  expect(figuresText('failed')).toMatchObject({ text: 'Not checked', grade: 'Error' });
  expect(figuresText('stopped')).toMatchObject({ text: 'Not checked', grade: 'Error' });
});
