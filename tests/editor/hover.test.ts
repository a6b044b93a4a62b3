import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { hover } from '../../server/src/editor/hover.ts';
import { template } from '../../server/src/editor/template.ts';
import { atCursor } from './opened.ts';
import { pedal } from '../jobs/pedal.ts';

/** What the hover says where `|` is put into the template, in place of `before`. */
function said(before: string, marked: string): string {
  expect(template).toContain(before);
  const { document, position } = atCursor(template.replace(before, marked));
  const contents = finish(hover(document, position))?.contents;
  return contents === undefined ? '' : (contents as { value: string }).value;
}

describe('the hover', () => {
  test('of a reading step says the window, bench by bench, and where the width comes from', () => {
    const text = said('- read: stage-1-loop', '- re|ad: stage-1-loop');
    expect(text).toContain('**stage-1-loop** reads **1.64..2.81 Ω** (computed)');
    expect(text).toContain('as built, ignition on: worst case 1.650 Ω to 2.809 Ω, nominal 2.217 Ω');
    // The stage is 1.7..2.3 Ω wide 0.6, the coupling twice 0.05..0.15 Ω wide 0.2, K30 twice 2..15 mΩ wide 0.026, the
    // instrument at 2.217 Ω twice 0.03 * 2.217 + 0.1 wide 0.333: of 1.159 in all that is 52, 29, 17 and 2 %.
    expect(text).toMatch(
      /```text\nstage-1 +█+▌? +52 %\ncontrol-unit +█+▌? +29 %\ncoil-coupling +█+▌? +17 %\nK30 +█?▌? +2 %\n```/,
    );
    // Twice the root of 0.3², 0.1² (both conductors together), twice 0.0065² and 0.1665², over √3, is 0.4128.
    expect(text).toContain('Root sum of squares: 1.804 Ω to 2.630 Ω, about 95 of 100 sound circuits.');
    expect(text).toContain('- ambient temperature: ');
    expect(text).toContain(
      '- error of control-unit: at most 3 % + 0.1 Ω, open beyond 10 Ω (stated in this file)',
    );
  });

  test('of a step that takes the last source away says the wait', () => {
    expect(said('- disconnect: battery', '- discon|nect: battery')).toContain(
      'battery is off: wait 3 min before hands touch what it feeds',
    );
  });

  test('of a wait that is too short says what is still owed', () => {
    expect(said('- wait: 3 min', '- wait: 1 m|in')).toContain('2 min more is owed by battery');
  });

  test('of an id says what it is', () => {
    expect(said('- unplug: K30', '- unplug: K|30')).toContain(
      'connector, contacts 2..15 mΩ, shorting bar on the end side',
    );
    expect(said('feeds: [control-unit]', 'feeds: [control|-unit]')).toContain(
      'reads 0..10 Ω, beyond it open, error 3 % + 0.1 Ω',
    );
    expect(said('else: faulty', 'else: fau|lty')).toContain('stop: The loop is not sound.');
    expect(said('disconnect: battery', 'disconnect: bat|tery')).toContain(
      'after it is off wait 3 min (3 min stated)',
    );
  });

  test('of a key says what the format says, with an example', () => {
    const text = said('resistance: 3.0 Ω ± 5 %', 'resist|ance: 3.0 Ω ± 5 %');
    expect(text).toMatch(/^\*\*resistance\*\*: .{10}/);
    expect(text).toMatch(/`resistance: .*Ω/);
  });

  test('of a comment or an empty line says nothing', () => {
    expect(said('# measured cold', '# meas|ured cold')).toBe('');
    expect(said('\nsteps:', '|\nsteps:')).toBe('');
  });

  test('of any place in any text does not throw', () => {
    for (let at = 0; at < template.length; at += 7) {
      const cut = template.slice(0, at + 40);
      const { document, position } = atCursor(`${cut.slice(0, at)}|${cut.slice(at)}`);
      const found = finish(hover(document, position));
      if (found?.range !== undefined) expect(found.range.start.line).toBeLessThanOrEqual(position.line);
    }
  });

  const coolant = readFileSync(
    new URL('../../procedures/coolant-sensor.procedure.yaml', import.meta.url),
    'utf8',
  );
  const saidOfCoolant = (before: string, marked: string): string => {
    expect(coolant).toContain(before);
    const { document, position } = atCursor(coolant.replace(before, marked));
    return ((finish(hover(document, position))?.contents ?? { value: '' }) as { value: string }).value;
  };

  test('of a reading over an entry says the window at some values', () => {
    const text = saidOfCoolant('- read: coolant-loop', '- re|ad: coolant-loop');
    expect(text).toContain(
      'By what is entered for coolant, for example:\n\n- coolant 15 °C: 3.039..3.594 kΩ\n',
    );
    expect(text).toContain('- coolant: 15..90 °C, measured to ± 1 °C (stated in this file)');
  });

  test('of an entry, and of what follows it', () => {
    expect(saidOfCoolant('temperature: coolant', 'temperature: cool|ant')).toBe(
      '**coolant**: entered before reading, Coolant temperature at the sensor, 15..90 °C, measured to ± 1 °C',
    );
    expect(saidOfCoolant('K41, coolant-sensor]', 'K41, coolant-sen|sor]')).toBe(
      '**coolant-sensor**: thermistor, NTC, 2.2 kΩ at 25 °C, B 3500 K, ± 3 %, at coolant (falls with temperature along its curve; stated in this file)',
    );
  });
});

describe('the hover in a network', () => {
  const bus = readFileSync(new URL('../../procedures/two-wire-bus.procedure.yaml', import.meta.url), 'utf8');
  const about = (before: string, marked: string): string => {
    expect(bus).toContain(before);
    const { document, position } = atCursor(bus.replace(before, marked));
    return (finish(hover(document, position))?.contents as { value: string } | undefined)?.value ?? '';
  };

  test('of a node says what ends there', () => {
    expect(about('across: [bus-high, ground]', 'across: [bus-|high, ground]')).toBe(
      '**bus-high**: node of front-wire-high, rear-wire-high, door-wire-high',
    );
  });

  test('of a potentiometer says its track and where its wiper may stand', () => {
    const { document, position } = atCursor(
      pedal.text.replace('{ part: pedal, between', '{ part: ped|al, between'),
    );
    expect((finish(hover(document, position))?.contents as { value: string } | undefined)?.value).toBe(
      '**pedal**: potentiometer, track 0.8..1.2 kΩ, wiper at 12..88 % from its first end',
    );
  });

  test('of a side says the nodes of its pins, since no instrument is on either', () => {
    expect(about('across: K70.unit', 'across: K70.un|it')).toBe(
      '**K70.unit**: the side with pin 1 at front-high, pin 2 at front-low',
    );
    expect(about('across: K70.harness', 'across: K70.har|ness')).toContain(
      'pin 1 at front-end-high, pin 2 at front-end-low',
    );
  });

  test('of a regulated supply says what it needs', () => {
    expect(about('source: bus-bias', 'source: bus|-bias')).toBe(
      '**bus-bias**: regulated supply, 2.3..2.7 V, on while battery is connected and the ignition on',
    );
  });

  test('of a measurement says the window and what it comes from', () => {
    const text = about('  - measure: resistance\n    id: whole', '  - mea|sure: resistance\n    id: whole');
    expect(text).toContain('The resistance across **bus-high..bus-low** reads **58.1..66.2 Ω** (computed)');
    expect(text).toContain('front-termination');
    expect(text).toContain('leads of hand-meter: 0.1..0.3 Ω (stated in this file)');
  });

  test('of something that is moved says the window of what is watched', () => {
    const text = about(
      '  - measure: resistance\n    id: whole',
      '  - wig|gle: front-wire-high\n    for: 1 min\n    quantity: resistance\n    id: whole',
    );
    expect(text).toContain('The resistance across **bus-high..bus-low** reads **58.1..66.2 Ω** (computed)');
  });

  test('of a voltage says what proves the circuit good, as of a resistance', () => {
    const text = about(
      '  - ignition: off\n',
      '  - ignition: on\n  - mea|sure: voltage\n    across: [bus-high, ground]\n    with: hand-meter\n  - ignition: off\n',
    );
    expect(text).toMatch(/ reads \*\*[\d.]+ V\*\* \(computed\)/);
    // Both bias resistors lead to the bus, 10 to 15 kΩ side by side, and the meter of 10 MΩ takes a little: 2.2966 V at
    // least, · 1.005 + 0.02 = 2.328; 2.6973 V at most, · 0.995 - 0.02 = 2.664.
    expect(text).toContain(
      'A reading of 2.33..2.66 V shows that the circuit is good, even at the largest error of the instrument.',
    );
  });

  test('of a voltage that nothing holds says so', () => {
    const text = about(
      '  - measure: voltage\n    across: [bus-high',
      '  - mea|sure: voltage\n    across: [bus-high',
    );
    expect(text).toContain('nothing connects the two points but the instrument');
  });
});
