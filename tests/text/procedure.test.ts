import { describe, expect, test } from 'vitest';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { textRules } from '../../server/src/text/rules.ts';
import { good } from './good.ts';
import { instead } from './marked.ts';

const { procedure, range, stepContent } = readProcedure({ id: 'good', text: good });

describe('a procedure as the engine sees it', () => {
  test('sources in SI units', () => {
    const battery = procedure.sources.get('battery');
    expect(battery).toMatchObject({
      kind: 'battery',
      feeds: ['control-unit'],
      feedsComplete: true,
      wait: 180,
    });
    const reserve = battery?.reserve;
    if (typeof reserve !== 'object' || reserve === null) throw new Error('no reserve');
    expect(reserve.capacitance.most).toBeCloseTo(0.00816, 12);
    expect(reserve.bleed.most).toBeCloseTo(4935, 9);
    expect(reserve.safeBelow.least).toBe(2);
  });

  test('what a source does not state is told apart from what cannot be read', () => {
    const read = (text: string) => readProcedure({ id: 'other', text }).procedure.sources.get('battery');
    expect(read(instead('    wait: 3 min\n    reserve', '    reserve'))?.wait).toBe('unstated');
    expect(read(instead('    wait: 3 min\n    reserve', '    wait: 3 mn\n    reserve'))?.wait).toBeNull();
    expect(read(instead('charged-to: 24 V', 'charged-to: 24 Ω'))?.reserve).toBeNull();
  });

  test('a monitor', () => {
    expect(procedure.monitors.get('control-unit')).toEqual({
      id: 'control-unit',
      path: ['instruments', 'control-unit'],
      kind: 'monitor',
      range: { least: 0, nominal: 5, most: 10 },
      accuracy: { fraction: 0.03, constant: 0.1, digits: 0 },
      resolution: 0.01,
      testCurrent: { least: 0.04, nominal: 0.04, most: 0.04 },
      tooLow: { below: 1 },
      tooHigh: { above: 4.5 },
      leakBelow: 5000,
    });
  });

  test('parts, connectors and their shorting bar', () => {
    expect(procedure.parts.get('dash-harness')).toMatchObject({
      form: 'two-conductor',
      resistance: { wire: { squareMillimetres: 0.5 }, length: { nominal: 1.2 } },
    });
    expect(procedure.parts.get('stage-1')).toMatchObject({
      form: 'end',
      live: true,
      noFire: { nominal: 0.4 },
    });
    expect(procedure.connectors.get('K30')?.shortingBar).toEqual({
      side: 'end',
      closes: 'unlocked',
      resistance: { least: 0.2, nominal: expect.closeTo(0.3, 12) as number, most: 0.4 },
      pins: null,
    });
  });

  test('a loop in order, with both pins of every connector', () => {
    const loop = procedure.loops.get('stage-1-loop');
    expect(loop?.monitor).toBe('control-unit');
    expect(loop?.complete).toBe(true);
    expect(loop?.elements.map(({ id }) => id)).toEqual([
      'K10',
      'dash-harness',
      'K21',
      'coil-coupling',
      'K30',
      'stage-1',
    ]);
    expect([...(loop?.pins ?? [])]).toEqual([
      ['K10', ['3', '4']],
      ['K21', ['01', '2']],
      ['K30', ['1', '2']],
    ]);
  });

  test('a part that has no readable kind is left out, and what names it is unreadable without a second finding', () => {
    const read = readProcedure({ id: 'other', text: instead('kind: rotary-coupling', 'kind: rotary') });
    expect(read.findings).toHaveLength(1);
    expect(read.procedure.parts.has('coil-coupling')).toBe(false);
    expect(read.procedure.loops.get('stage-1-loop')?.complete).toBe(false);
    expect(read.procedure.steps[11]).toMatchObject({ verb: 'broken', id: 'blame-coupling' });
  });

  test('notices and minutes stand on their step', () => {
    expect(procedure.steps[8]).toMatchObject({
      warning: 'Nobody in front of the airbag while power comes back.',
    });
    expect(procedure.steps.find(({ id }) => id === 'finish')?.minutes).toBe(1.5);
  });
});

describe('where things stand', () => {
  const textAt = (...where: Parameters<typeof range>) => {
    const { from, to } = range(...where);
    return good.slice(from, to);
  };

  test('keys and values', () => {
    const path = ['steps', 8, 'unplug'];
    expect(textAt({ file: 'good', path, part: 'key' })).toBe('unplug');
    expect(textAt({ file: 'good', path, part: 'value' })).toBe('K30');
    expect(textAt({ file: 'good', path: ['loops', 'stage-1-loop', 'path', 2], part: 'value' })).toBe(
      'dash-harness',
    );
  });

  test('a list item has a value only; its key is that of its verb', () => {
    expect(textAt({ file: 'good', path: ['steps', 8], part: 'key' })).toBe('unplug');
    expect(textAt({ file: 'good', path: ['steps', 12], part: 'value' })).toBe('read: [stage-1-loop]');
  });

  test('a stretch inside a scalar, quoted or not', () => {
    const path = ['loops', 'stage-1-loop', 'pins', 'K21', 0];
    expect(textAt({ file: 'good', path, part: 'value', within: [1, 2] })).toBe('1');
    expect(textAt({ file: 'good', path: ['steps', 9, 'at'], part: 'value', within: [0, 3] })).toBe('K30');
    expect(textAt({ file: 'good', path: ['steps', 9, 'at'], part: 'value', within: [4, 99] })).toBe(
      'monitor',
    );
  });

  test('what is not there is shown at the key above it', () => {
    expect(textAt({ file: 'good', path: ['steps', 8, 'note'], part: 'value' })).toBe('unplug');
    expect(textAt({ file: 'good', path: ['parts', 'stage-1', 'colour'], part: 'key' })).toBe('stage-1');
    expect(textAt({ file: 'good', path: ['routines', 'a', 3], part: 'key' })).toBe('format');
  });

  test('a step has a name of its own content', () => {
    expect(stepContent(['steps', 8])).toBe('unplug K30');
    expect(stepContent(['steps', 5])).toBe('make-safe');
    expect(stepContent(['steps', 18])).toBe('wait 3 min (2)');
  });
});

test('every rule of the text has a name, a meaning and a reason', () => {
  expect(new Set(textRules.map(({ name }) => name)).size).toBe(textRules.length);
  for (const { name, meaning, why } of textRules) {
    expect(name).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(meaning).toMatch(/\.$/);
    expect(why).toMatch(/\.$/);
  }
});
