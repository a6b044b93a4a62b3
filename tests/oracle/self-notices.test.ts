import { describe, expect, test } from 'vitest';
import { dead, said } from './sample.ts';

/* The oracle on notices, against procedures whose findings were worked out by hand. */

describe('missing-notice', () => {
  const warning = 'Touch bare metal.';
  test('the first hands near a stage, on each path by itself', () => {
    const steps = [...dead, { unplug: 'K2' }, { plug: 'K2' }];
    expect(said('missing-notice', steps)).toEqual(['- at 3 in 3']);
    expect(said('missing-notice', [...dead, { unplug: 'K2', warning }, { plug: 'K2' }])).toEqual([]);
    const branch = [
      { inspect: 'Which one?', outcomes: { ok: 'far', defect: 'next' } },
      ...dead,
      { unplug: 'K2', warning },
      { unlock: 'K1', id: 'far' },
    ];
    expect(said('missing-notice', branch)).toEqual(['- at 5 in 2']);
    expect(said('missing-notice', [{ unlock: 'K3' }])).toEqual([]);
  });
  test('a stage in the hands, each time', () => {
    const steps = [...dead, { unplug: 'K2', warning }, { replace: 'stage' }, { do: 'Turn it.', at: 'stage' }];
    expect(said('missing-notice', steps)).toEqual(['- at 4 in 4', '- at 5 in 5']);
    expect(said('missing-notice', [...dead, { replace: 'stage', danger: 'It can fire.' }])).toEqual([]);
  });
});
