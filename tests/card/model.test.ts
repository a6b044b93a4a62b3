import { describe, expect, test } from 'vitest';
import { buildCard } from '../../server/src/card/build.ts';
import type { CardInput, CardModel, CardStep } from '../../server/src/card/model.ts';
import { plainWords } from '../../server/src/card/words.ts';
import type { Battery, Step } from '../../server/src/model/procedure.ts';
import { connector, input, procedure, range, ways } from './halden.ts';

const card = buildCard(input);

function stepsOf(model: CardModel): readonly CardStep[] {
  return model.steps.sections.flatMap((section) => section.steps);
}

function step(number: number, model = card): CardStep {
  const found = stepsOf(model).find((candidate) => candidate.number === String(number));
  if (found === undefined) throw new Error(`no step ${number}`);
  return found;
}

function waysOut(number: number, model = card): readonly string[] {
  return (step(number, model).outcomes?.rows ?? []).map(
    ({ when, then, to }) =>
      `${plainWords(when)} -> ${then} ${to === null || to === 'end' ? (to ?? '?') : to.step}`,
  );
}

function withStep(number: number, change: (step: Step) => Step, more: Partial<CardInput> = {}): CardModel {
  const steps = procedure.steps.map((one) => (one.number === number ? change(one) : one));
  return buildCard({ ...input, ...more, procedure: { ...procedure, steps } });
}

function facts(model: CardModel, label: string): readonly string[] {
  return model.assumptions.facts.filter((fact) => fact.label === label).map((fact) => plainWords(fact.words));
}

describe('what a step says', () => {
  test.each([
    [2, 'Switch the ignition on.'],
    [5, 'Switch the ignition off.'],
    [6, 'Disconnect the battery, then insulate its cable end.'],
    [7, 'Wait at least 3 min. Do not shorten.'],
    [8, 'Unlock connector K30 and leave it plugged in.'],
    [9, 'Unplug connector K30.'],
    [11, 'Fit bench-lamp at K30, monitor side (pins 1 and 2).'],
    [12, 'Reconnect the battery.'],
    [14, 'Read stage-1-loop on control-unit.'],
    [18, 'Move bench-lamp to K21, monitor side (pins 1 and 2).'],
    [19, 'Switch the ignition off, then on again.'],
    [22, 'Conclusion: the fault is in one of coil-coupling or connector K30.'],
    [24, 'Remove bench-lamp.'],
    [25, 'Plug connector K30 in until it locks.'],
    [26, 'Go to step 4.'],
    [28, 'Conclusion: no fault found.'],
    [29, 'Clear the codes of control-unit.'],
  ])('step %i: %s', (number, text) => {
    expect(plainWords(step(number).action)).toBe(text);
  });

  test('where hands are, that they are nowhere, and what is only looked at', () => {
    const said = (number: number): readonly string[] => step(number).details.map(plainWords);
    expect(said(1)).toContain('Touch no connector and no wire.');
    expect(said(10)).toEqual(
      expect.arrayContaining(['Your hands are at connector K30.', 'Only look at stage-1.']),
    );
  });

  test('all steps are there, under their headings, with the numbers of the file', () => {
    expect(stepsOf(card).map(({ number }) => number)).toEqual(
      procedure.steps.map(({ number }) => String(number)),
    );
    expect(card.steps.sections.map(({ title }) => title)).toEqual([
      ...new Set(procedure.steps.map((one) => one.section)),
    ]);
  });

  test('the half of the connector is told by what it goes to, not only by its name', () => {
    expect(step(11).details.map(plainWords)).toContain(
      'The monitor side is the connector half with the wire to coil-coupling. Loop stage-1-loop.',
    );
    const other = withStep(11, (one) =>
      one.verb === 'fit' ? { ...one, at: { connector: 'K10', side: 'monitor', loop: 'stage-2-loop' } } : one,
    );
    expect(plainWords(step(11, other).action)).toBe('Fit bench-lamp at K10, monitor side (pins 5 and 6).');
    expect(plainWords(step(11, other).details[0] ?? [])).toContain('half with the wire to control-unit');
  });

  test('a wait that is not whole seconds is printed longer, never shorter', () => {
    const odd = withStep(7, (one) => (one.verb === 'wait' ? { ...one, seconds: 100.2 } : one));
    expect(plainWords(step(7, odd).action)).toContain('1 min 41 s');
  });

  test('where a step is reached by a jump it says from where', () => {
    const from = (number: number): string => plainWords(step(number).reachedFrom ?? []);
    expect(from(4)).toBe('Also reached from step 26.');
    expect(from(27)).toBe('Reached only from steps 4 and 20.');
    expect(from(28)).toBe('Reached only from step 4.');
    expect(step(6).reachedFrom).toBeNull();
  });
});

describe('outcomes', () => {
  test('name the numbers on the card, and what the display shows', () => {
    expect(waysOut(20)).toEqual([
      'Shows 2.40..3.60 Ω -> go to step 22',
      'Shows less than 2.40 Ω -> go to step 27',
      'Shows more than 3.60 Ω -> go to step 23',
      'Reads open (no number) -> go to step 23',
    ]);
  });

  test('`else` lists all that is left, a leak too where the instrument looks for one, and stands last', () => {
    expect(waysOut(14)).toEqual([
      'Shows 1.96..3.63 Ω -> go to step 21',
      'Anything else (less; more; open; a leak) -> next step: 15',
    ]);
    const turned = withStep(14, (one) =>
      one.verb === 'read' ? { ...one, outcomes: ways({ else: 15, within: 21 }) } : one,
    );
    expect(waysOut(14, turned)).toEqual(waysOut(14));
  });

  test('of several loops keep their written order', () => {
    expect(step(4).outcomes?.introduction).toMatch(/first line that is true/);
    expect(waysOut(4)).toEqual([
      'Every one of them is within its window -> go to step 28',
      'stage-2-loop shows anything else than 1.72..2.94 Ω -> go to step 27',
      'stage-1-loop shows less than 1.72 Ω -> go to step 27',
      'stage-1-loop reports a leak to ground or to a supply -> go to step 27',
      'Anything else -> next step: 5',
    ]);
  });

  test('`else` that is what is left says what that is: the window', () => {
    const left = (outcomes: Readonly<Record<string, number>>): readonly string[] => {
      const readings = input.readings.map((one) => ({ ...one, elseIsWithin: one.index === 13 }));
      return waysOut(
        14,
        withStep(14, (one) => (one.verb === 'read' ? { ...one, outcomes: ways(outcomes) } : one), {
          readings,
        }),
      );
    };
    const within = 'Shows 1.96..3.63 Ω -> go to step 21';
    expect(left({ outside: 15, else: 21 })).toEqual([
      within,
      'Anything else (less; more; open; a leak) -> next step: 15',
    ]);
    expect(left({ below: 15, above: 15, open: 15, leak: 15, else: 21 })).toContain(within);
  });

  test('of several loops it says so where that holds for each of them, and is not said twice', () => {
    const of = (...loops: readonly string[]) => ({
      readings: input.readings.map((one) => ({ ...one, elseIsWithin: loops.includes(one.of) })),
    });
    const outside = [...ways({ outside: 27 }, 'stage-1-loop'), ...ways({ outside: 27 }, 'stage-2-loop')];
    const said = (outcomes: ReturnType<typeof ways>, ...loops: readonly string[]) =>
      waysOut(
        4,
        withStep(4, (one) => (one.verb === 'read' ? { ...one, outcomes } : one), of(...loops)),
      );
    const both = [...outside, ...ways({ else: 28 })];
    expect(said(both, 'stage-1-loop', 'stage-2-loop')).toContain(
      'Every one of them is within its window -> go to step 28',
    );
    expect(said(both, 'stage-1-loop')).toContain('Anything else -> go to step 28');
    const twice = [...outside, ...ways({ within: 28, else: 5 })];
    expect(said(twice, 'stage-1-loop', 'stage-2-loop').at(-1)).toBe('Anything else -> next step: 5');
  });

  test('`else` stands last of several loops too, wherever it is written', () => {
    const turned = withStep(4, (one) =>
      one.verb === 'read'
        ? { ...one, outcomes: [...ways({ else: 5 }), ...ways({ open: 27 }, 'stage-1-loop')] }
        : one,
    );
    expect(waysOut(4, turned)).toEqual([
      'stage-1-loop reads open (no number) -> go to step 27',
      'Anything else -> next step: 5',
    ]);
  });

  test('`else` lists nothing that the window cannot leave over', () => {
    const listed = (printed: string): string => {
      const readings = [
        {
          index: 13,
          of: 'stage-1-loop',
          quantity: 'resistance' as const,
          printed,
          from: 'computed' as const,
          nominal: null,
          isOuter: false,
          elseIsWithin: false,
          rows: [],
        },
      ];
      return waysOut(14, buildCard({ ...input, readings }))[1] ?? '';
    };
    expect(listed('open')).toContain('(a number; a leak)');
    expect(listed('above 9.00 Ω')).toContain('(less; a leak)');
    expect(listed('0.00..1.00 Ω')).toContain('(more; open; a leak)');
  });

  test('where open is within the window, no line sends an open loop elsewhere', () => {
    const readings = (printed: string): Partial<CardInput> => ({
      readings: [
        {
          index: 19,
          of: 'stage-1-loop',
          quantity: 'resistance',
          printed,
          from: 'expect',
          nominal: null,
          isOuter: false,
          elseIsWithin: false,
          rows: [],
        },
      ],
    });
    const open = withStep(20, (one) => one, readings('open'));
    expect(step(20, open).windows[0]?.window).toBe('open (no number)');
    expect(waysOut(20, open)).toContain('Reads open (no number) -> go to step 22');
    expect(waysOut(20, open)).not.toContain('Reads open (no number) -> go to step 23');
    const above = withStep(20, (one) => one, readings('above 9.00 Ω'));
    expect(step(20, above).windows[0]?.window).toBe('above 9.00 Ω, or open');
    expect(waysOut(20, above)).not.toContain('Reads open (no number) -> go to step 23');
    const below = withStep(20, (one) => one, readings('below 1.00 Ω'));
    expect(waysOut(20, below)).toContain('Reads open (no number) -> go to step 23');
    expect(waysOut(20, below)).toContain('Shows more than 1.00 Ω -> go to step 23');
  });

  test('a target that does not exist is said, not left out', () => {
    const lost = withStep(20, (one) =>
      one.verb === 'read' ? { ...one, outcomes: [{ name: 'within', target: null, path: [] }] } : one,
    );
    expect(waysOut(20, lost)).toEqual(['Shows 2.40..3.60 Ω -> a step that is not in the file ?']);
  });

  test('of codes and of an inspection', () => {
    expect(waysOut(3)[0]).toBe('No code -> next step: 4');
    expect(waysOut(10)).toEqual(['In order -> next step: 11', 'Defect found -> go to step 24']);
  });
});

describe('windows, codes and what is left', () => {
  test('the window is the printed text of the reading, digit by digit', () => {
    expect(step(14).windows.map(({ window }) => window)).toEqual(['1.96..3.63 Ω']);
    expect(step(4).windows.map(({ of }) => plainWords(of))).toEqual(['stage-1-loop', 'stage-2-loop']);
  });

  test('a computed window that is an outer bound says so, and what that means', () => {
    const readings = input.readings.map((one) => ({ ...one, isOuter: one.index === 13 }));
    const model = buildCard({ ...input, readings });
    expect(step(14, model).windows[0]?.remark).toBe(
      'typically 2.78 Ω; computed from the parts, an outer bound',
    );
    expect(step(4, model).windows[0]?.remark).toBe('typically 2.32 Ω; computed from the parts');
    expect(facts(model, 'An outer bound')).toHaveLength(1);
    expect(facts(card, 'An outer bound')).toEqual([]);
  });

  test('codes say whether they are certain', () => {
    expect(step(13).codes?.lines.map(plainWords)).toEqual([
      'A code for stage-2-loop: open is expected here.',
      'A code for stage-1-loop: too-high is possible here.',
    ]);
  });

  test('a stop says what stays as it is, and what only some ways leave so', () => {
    expect(step(27).left?.items.map(plainWords)).toEqual([
      'Connector K30 is unplugged.',
      'The codes of control-unit are not cleared.',
    ]);
    expect(step(27).left?.sometimes?.items.map(plainWords)).toEqual([
      'The battery is disconnected.',
      'bench-lamp is still fitted.',
    ]);
  });

  test('a repair that is not verified is named; where all ways leave the same, nothing depends on them', () => {
    const left = [{ index: 26, left: [{ id: 'K30', as: 'repair' as const, always: true }] }];
    const model = buildCard({ ...input, left });
    expect(step(27, model).left?.items.map(plainWords)).toEqual([
      'The repair of connector K30 is not verified.',
    ]);
    expect(step(27, model).left?.sometimes).toBeNull();
    const opened = [{ index: 26, left: [{ id: 'stage-2-loop', as: 'repair' as const, always: true }] }];
    expect(step(27, buildCard({ ...input, left: opened })).left?.items.map(plainWords)).toEqual([
      'Loop stage-2-loop was opened and is not verified.',
    ]);
  });
});

describe('assumptions', () => {
  const battery = procedure.sources.get('battery');
  const withBattery = (change: Partial<Battery>, seconds: number): CardModel => {
    if (battery === undefined) throw new Error('no battery');
    const sources = new Map([['battery', { ...battery, ...change }]]);
    return buildCard({
      ...input,
      procedure: { ...procedure, sources },
      owed: [{ source: 'battery', seconds }],
    });
  };

  test('the wait says whether it is stated or computed', () => {
    expect(facts(card, 'Wait after the battery')[0]).toMatch(
      /^once it is off, 3 min .*\(stated in the procedure; /,
    );
    expect(facts(withBattery({ wait: 60 }, 100.1), 'Wait after the battery')[0]).toMatch(
      /1 min 41 s .*\(computed from the reserve, 5\.44\.\.8\.16 mF from 24 V to 2 V through 4\.465\.\.4\.935 kΩ\)/,
    );
  });

  test('a wait of 0 s is printed', () => {
    const none = withBattery({ wait: 0, reserve: 'unstated' }, 0);
    expect(facts(none, 'Wait after the battery')[0]).toContain('no wait (0 s)');
  });

  test('parts that are stated not to be live are named', () => {
    expect(facts(card, 'Taken as inert')).toEqual([
      'stage-2: stated as live: false, a part that cannot fire. No rule for live stages was applied to it.',
    ]);
  });

  test('a cable by its size names what its limits rest on', () => {
    expect(facts(card, 'Part').filter((fact) => fact.includes('copper'))).toEqual([
      'dash-harness: 1.2 m of 0.5 mm² copper (annealed copper, 0.393 % per kelvin; IEC 60028; at most as IEC 60228 class 5, plain or coated wires)',
    ]);
  });

  test('instrument, contacts and ambient', () => {
    expect(facts(card, 'Instrument')).toEqual([
      'control-unit: error at most 3 % + 0.1 Ω, last digit 0.01 Ω, reads open beyond 10 Ω',
    ]);
    expect(facts(card, 'Contact resistance')).toEqual(['K10, K21 and K30: 2..15 mΩ each pin']);
    expect(facts(card, 'Ambient')).toEqual(['10..35 °C']);
    const assumed = { ...procedure, ambient: { ...range(5, 40), assumed: true } };
    expect(facts(buildCard({ ...input, procedure: assumed }), 'Ambient')[0]).toContain(
      'not stated in the procedure',
    );
  });
});

test('only loads that a step uses are asked for, and parts with the step that needs them', () => {
  const needs = Object.fromEntries(
    card.needs.groups.map(({ label, items }) => [label, items.map(plainWords)]),
  );
  expect(needs.Loads).toEqual(['bench-lamp (lamp, measured cold): 2.85..3.15 Ω']);
  expect(needs['Parts, if a step asks for them']).toEqual([
    'new coil-coupling (step 23)',
    'new connector K30 (step 23)',
  ]);
});

test('a step that could not be read does not stop the card', () => {
  const broken = withStep(
    9,
    ({ number, path, index, file, calls }) => ({ number, path, index, file, calls, verb: 'broken' }),
    { draft: true },
  );
  expect(plainWords(step(9, broken).action)).toBe('This step could not be read from the file.');
});

test('a shorting bar with pins of another loop is not drawn in this one', () => {
  const own = connector('K30', { side: 'end', closes: 'unlocked', resistance: null, pins: ['2', '1'] });
  const model = buildCard({
    ...input,
    procedure: { ...procedure, connectors: new Map([...procedure.connectors, ['K30', own]]) },
  });
  const bars = model.drawings.loops.map((loop) =>
    loop.elements.flatMap((element) =>
      element.kind === 'connector' && element.bar !== null ? [element.id] : [],
    ),
  );
  expect(bars).toEqual([['K30'], []]);
});
