import { describe, expect, it } from 'vitest';
import { mostWork } from '../../server/src/paths/effort.ts';
import { defaultBounds } from '../../server/src/paths/explore.ts';
import type { Work } from '../../server/src/model/work.ts';
import { cardHtml } from '../../server/src/card/html.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { card } from '../../server/src/project/card.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import * as large from './large-files.ts';
import type { LargeFile } from './large-files.ts';

/*
 * No file makes the program fail, hang or fill memory: what is too large is said where it is. Time is guarded by the
 * runner alone; what is compared is how often work could have been stopped, and how long the card is.
 */

/** Cases of which all is checked. */
const whole: Readonly<Record<string, () => LargeFile>> = {
  'a loop of 3,000 connectors and parts': () => large.longLoop(1500),
  'a ladder of 1,000 resistors': () => large.ladder(330),
  'a star of 1,500 resistors': () => large.star(1500),
  'a grid of 1,700 resistors': () => large.grid(30),
  '40 nodes, each joined to 40 others': () => large.everyToEvery(40),
  'a voltage along a ladder of 300 resistors': () => large.ladderVoltage(100),
  '1,200 parts, each two at a temperature of their own': () => large.ownTemperatures(600),
  '1,200 parts that go both ways with one temperature': () => large.oneTemperature(600),
  '1,000 loops that are read': () => large.manyLoops(1000),
  '5,000 touches of one connector': () => large.manyTouches(5000),
  '500 readings that lead everywhere': () => large.manyOutcomes(500, 4),
  'leaks past 1,200 resistors': () => large.leaks(600),
  '300 steps at 150 live stages': () => large.stepsAndStages(300, 150),
  '100 branches that each leave a connector of its own open or not': () => large.branches(100, true),
  '100 loads, each fitted at a connector': () => large.fittedLoads(100),
};

/** With a twentieth of it, so that smaller files are large. */
const tooMuch: Readonly<Record<string, () => LargeFile>> = {
  '1,500 steps at 750 live stages': () => large.stepsAndStages(1500, 750),
  '1,000 steps at 400 sources': () => large.stepsAndSources(1000, 400),
  '600 sources of one monitor': () => large.sourcesOfOne(600),
  '1,000 loops of one connector, each with a reading': () => large.manyReadings(1000),
  '200 measurements in a network of 600 resistors': () => large.manyMeasured(200),
  '300 supplies, and a voltage': () => large.manySupplies(300),
  '600 branches that each leave a connector of one loop open or not': () => large.branches(600, false),
  '600 loads, each fitted at a connector of one loop': () => large.fittedLoads(600),
  'a loop that is read with more and more of 400 connectors open': () => large.readWhileOpening(400),
  '1,200 parts that are replaced': () => large.replacements(1200),
  '500 loops through a connector that is opened 750 times': () => large.loopsOfOneConnector(500, 1500),
};

/** Cases whose window is an outer bound, and is said to be one. */
const outer: Readonly<Record<string, () => LargeFile>> = {
  '20 entries that parts on both sides follow': () => large.manyEntries(20),
  '100 entries that parts on both sides follow': () => large.manyEntries(100),
  'a voltage across a grid of 420 resistors': () => large.gridVoltage(15),
};

/** Cases that the reader tells of; the rule that does. */
const toldByReader: Readonly<Record<string, readonly [rule: string, says: RegExp, make: () => LargeFile]>> = {
  '70,000 findings': ['yaml', /more than 100000 words/, () => large.manyFindings(70_000)],
  '60,000 steps by a routine that is called again and again': [
    'file',
    /more than 50000 steps.*not checked/,
    () => large.manyCalls(200, 300),
  ],
  '3,000 nested routines': ['wrong-call', /16 deep.*not checked/, () => large.nestedRoutines(3000)],
  '6,000 parts files in a chain': ['parts-file', /200 parts files.*not read/, () => large.partsFiles(6000)],
};

interface Checked {
  readonly findings: readonly { readonly rule: string; readonly message: string }[];
  readonly isComplete: boolean;
  /** By reading: whether its window is met. */
  readonly exact: readonly boolean[];
}

/** Everything that is asked of a file, with what must hold however large it is. */
function checked({ text, parts = new Map() }: LargeFile, work = mostWork): Checked {
  const own = 'file:///workshop/a.procedure.yaml';
  const beside = [...parts].map(([name, content]) => ({ id: `file:///workshop/${name}`, text: content }));
  const analysis = analyse(snapshotOf([{ id: own, text }, ...beside]), own, { ...defaultBounds, work });
  const { value: readings } = counted(analysis.windows());
  const { complete } = counted(analysis.order());
  const findings = counted(analysis.findings('order'));
  expect(analysis.failure()).toBeNull();
  const made = counted(card(analysis, { date: '2031-04-17', version: '0.0.0', draft: true }));
  const html = 'card' in made ? cardHtml(made.card) : '';
  expect(html).not.toBe('');
  // Style and headings, and some lines for each line of the file.
  expect(html.length).toBeLessThan(50_000 + 50 * text.length);
  return {
    findings,
    isComplete: analysis.procedure().complete && complete,
    exact: readings.readings.map((reading) => reading.exact),
  };
}

/** Drives work to its end, and counts. It can be stopped at least once in 2,000 units; three stages have them. */
function counted<T>(work: Work<T>): T {
  for (let stops = 0; ; stops += 1) {
    const next = work.next();
    if (next.done === true) {
      expect(stops).toBeLessThan((3 * mostWork) / 1000);
      return next.value;
    }
  }
}

const rulesOf = ({ findings }: Checked): readonly string[] => findings.map(({ rule }) => rule);

describe('of a very large procedure', { timeout: 300_000 }, () => {
  it.each(Object.entries(whole))('all is checked: %s', (_, make) => {
    const found = checked(make());
    expect(found.isComplete).toBe(true);
    expect(rulesOf(found)).not.toContain('too-many-states');
    expect(found.exact).not.toContain(false);
  });

  it.each([...Object.entries(tooMuch).map(([name, make]) => [name, mostWork / 20, make] as const)])(
    'a finding says that it is not checked to the end: %s',
    (_, work, make) => {
      const found = checked(make(), work);
      expect(found.isComplete).toBe(false);
      const said = found.findings.filter(({ rule }) => rule === 'too-many-states');
      expect(said.map(({ message }) => message)).toContainEqual(
        expect.stringMatching(/not checked to the end.*Make several procedures of it/),
      );
    },
  );

  it.each(Object.entries(outer))('the window says that it is an outer bound: %s', (_, make) => {
    expect(checked(make()).exact).toEqual([false]);
  });

  it.each(Object.entries(toldByReader))('the reader says its limit: %s', (_, [rule, says, make]) => {
    const found = checked(make());
    expect(found.findings.filter((one) => one.rule === rule).map(({ message }) => message)).toContainEqual(
      expect.stringMatching(says),
    );
  });
});
