import { describe, expect, test } from 'vitest';
import { foundIn } from '../jobs/job.ts';

/* What an insulation tester of less than 60 V leaves behind, on a motor that nothing else hangs on. */

function found(measured: string, after: string): readonly string[] {
  return foundIn(`format: 1
title: Motor winding - insulation
sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [relay], wait: 1 min }
instruments:
  tester: { kind: multimeter, insulation: { range: 0..2 GΩ, accuracy: 3 % + 5 digits, resolution: 10 kΩ, discharge: 10 s } }
parts:
  relay: { kind: resistor, resistance: 80..100 Ω }
  winding: { kind: coil, resistance: 1.0..1.2 Ω, withstands: 100 V }
connectors:
  K40: { contact: 2..15 mΩ, sides: [harness, motor], withstands: 100 V }
network:
  - { part: relay, between: [feed, ground] }
  - { connector: K40, pin: 1, between: [feed, winding-plus] }
  - { connector: K40, pin: 2, between: [ground, winding-minus] }
  - { part: winding, between: [winding-plus, winding-minus] }
steps:
  - ignition: off
  - disconnect: battery
  - wait: 1 min
  - unplug: K40
  - measure: insulation
    across: [K40.motor.1, ground]
    ${measured.split('\n').join('\n    ')}
    with: tester
    expect: above 1 MΩ
${after}  - plug: K40
  - reconnect: battery
  - stop: Done.
`);
}

describe('below 60 V the charge of an insulation tester', () => {
  test('counts until its time to discharge has been waited', () => {
    expect(found('at-voltage: 50 V', '')).toEqual(['error short-wait K40']);
    expect(found('at-voltage: 50 V', '  - wait: 9 s\n')).toEqual(['error short-wait K40']);
    expect(found('at-voltage: 50 V', '  - wait: 10 s\n')).toEqual([]);
  });
  test('is gone where the step says that the tester has taken it away', () => {
    expect(found('at-voltage: 50 V\ndischarged: true', '')).toEqual([]);
  });
  test('counts for each piece that one step touches', () => {
    const other =
      '  - measure: insulation\n    across: [feed, ground]\n    at-voltage: 50 V\n    with: tester\n    expect: above 1 MΩ\n';
    const hands = '  - do: Push both aside.\n    at: [winding, relay]\n';
    const short = found('at-voltage: 50 V', `${other}${hands}`).filter((line) => line.includes('short-wait'));
    expect(short).toEqual(['error short-wait winding', 'error short-wait relay']);
  });
  test('counts at each touch: another measurement there', () => {
    const again =
      '  - measure: insulation\n    across: [K40.motor.2, ground]\n    at-voltage: 50 V\n    discharged: true\n    with: tester\n    expect: above 1 MΩ\n';
    expect(found('at-voltage: 50 V', again)).toEqual(['error short-wait K40']);
  });
});

describe('from 60 V on', () => {
  test('no wait is enough', () => {
    expect(found('at-voltage: 60 V', '  - wait: 1 h\n')).toContain('error short-wait K40');
  });
  test('nobody is believed that it is gone', () => {
    expect(found('at-voltage: 60 V\ndischarged: true', '')).toContain('error wrong-value -');
  });
  test('counts where a step does not say what hands touch', () => {
    const look = '  - inspect: Is the insulation clean?\n    outcomes: { ok: next, defect: next }\n';
    const silent = found('at-voltage: 50 V', look);
    expect(silent).toContain('error touch-not-said -');
    expect(found('at-voltage: 50 V', look.replace('    out', '    at: nothing\n    out'))).not.toContain(
      'error touch-not-said -',
    );
    expect(found('at-voltage: 50 V', `  - wait: 10 s\n${look}`)).not.toContain('error touch-not-said -');
  });
});
