import { describe, expect, test } from 'vitest';
import { said } from './sample.ts';

/* What the oracle makes of loads that are fitted where they do not count, worked out by hand. */

describe('loads under a closed bar', () => {
  const bridged = (...steps: readonly object[]) =>
    said(
      'load-bridged',
      steps.map((step) => ({ ...step })),
    );
  test('where the load is fitted', () => {
    expect(bridged({ unplug: 'K2' }, { fit: 'lamp', at: 'K2.end' })).toEqual(['lamp at 2 in 2']);
    expect(bridged({ unplug: 'K2' }, { fit: 'lamp', at: 'K2.monitor' })).toEqual([]);
    expect(bridged({ unplug: 'K2' }, { fit: 'plug', at: 'K2.end' })).toEqual([]);
    expect(bridged({ unplug: 'K1' }, { fit: 'lamp', at: 'K1.end' })).toEqual([]);
    const moved = [{ unlock: 'K2' }, { fit: 'lamp', at: 'K2.end' }, { move: 'lamp', to: 'K2.monitor' }];
    expect(bridged(...moved)).toEqual(['lamp at 2 in 2']);
    // While the halves still touch, either side is beside the bar.
    expect(bridged({ unlock: 'K2' }, { fit: 'lamp', at: 'K2.monitor' })).toEqual(['lamp at 2 in 2']);
  });
  test('where the bar closes', () => {
    expect(bridged({ fit: 'lamp', at: 'K2.end' }, { unlock: 'K2' })).toEqual(['lamp at 2 in 2']);
    expect(bridged({ fit: 'lamp', at: 'K2.end' }, { unplug: 'K2' })).toEqual([]);
    const adapter = [{ unplug: 'K2' }, { fit: 'plug', at: 'K2.end' }, { fit: 'lamp', at: 'K2.end' }];
    expect(bridged(...adapter)).toEqual([]);
    expect(bridged(...adapter, { remove: 'plug' })).toEqual(['lamp at 4 in 4']);
  });
});
