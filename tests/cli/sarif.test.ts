import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { StepRef } from '../../server/src/model/where.ts';
import { rules } from '../../server/src/rules/rules.ts';
import { textRules } from '../../server/src/text/rules.ts';
import { ran } from './fake-terminal.ts';
import { checkedTexts, fileOf, logOf, parsed, textAt } from './sarif-log.ts';
import type { Log, Result } from './sarif-log.ts';

const example = (name: string): string =>
  rules.find((rule) => rule.name === name)?.examples.triggers.text ?? '';

const shipped = readFileSync(
  fileURLToPath(new URL('../fixtures/driver-airbag-written-out.procedure.yaml', import.meta.url)),
  'utf8',
);
const unsafe = shipped.replace(/ {2}- disconnect: battery\n(?: {4}.*\n)*/, '');

const file = 'a.procedure.yaml';
const logOfText = (text: string): Log => logOf(checkedTexts({ [file]: text }));
const resultsOf = (text: string): readonly Result[] => logOfText(text).runs[0].results;

function resultOf(text: string, rule: string): Result {
  const found = resultsOf(text).find(({ ruleId }) => ruleId === rule);
  if (found === undefined) throw new Error(`no result of ${rule}`);
  return found;
}

function hopsOf(result: Result | undefined) {
  return result?.codeFlows?.[0].threadFlows[0].locations ?? [];
}

describe('the rules in a log', () => {
  const { driver } = logOfText(unsafe).runs[0].tool;

  test('are all there, each once, with meaning, why, source, examples and level', () => {
    expect(driver.rules.map(({ id }) => id)).toEqual([...rules, ...textRules].map(({ name }) => name));
    for (const [index, rule] of rules.entries()) {
      const descriptor = driver.rules[index];
      expect(descriptor?.shortDescription.text).toBe(rule.meaning);
      expect(descriptor?.fullDescription.text).toBe(rule.why);
      expect(descriptor?.help.text).toContain(rule.source);
      for (const { text, shows } of Object.values(rule.examples)) {
        expect(descriptor?.help.markdown).toContain(shows);
        expect(descriptor?.help.markdown).toContain(`\`\`\`yaml\n${text.trimEnd()}\n\`\`\``);
      }
      const level = rule.severity === 'information' ? 'note' : rule.severity;
      expect(descriptor?.defaultConfiguration.level).toBe(level);
    }
  });

  // 3.49.7 of SARIF 2.1.0: a name is for people and differs from the id.
  test('have names that are not their ids', () => {
    for (const { id, name } of driver.rules) expect(name?.toLowerCase()).not.toBe(id);
    expect(driver.rules[0]?.name).toBe('LiveTouch');
  });

  test('are those that the results point to', () => {
    const all = [unsafe, ...rules.map(({ examples }) => examples.triggers.text)].flatMap(resultsOf);
    expect(all.length).toBeGreaterThan(rules.length);
    for (const { ruleId, ruleIndex } of all) expect(driver.rules[ruleIndex]?.id).toBe(ruleId);
  });
});

describe('a region in a log', () => {
  const strange = example('live-touch').replace('title: Example', 'title: "🔧 Prüfung 🔧"');

  test.each([
    ['as it is', strange],
    ['with line breaks of Windows', strange.replaceAll('\n', '\r\n')],
    ['with a byte order mark', `\uFEFF${strange}`],
    [
      'with characters of two units before the place',
      strange.replace(/- unplug: K30\n +warning: (.*)/, '- { warning: 🔧🔧 $1, unplug: K30 }'),
    ],
  ])('covers what is at fault, in a text %s', (_name, text) => {
    const result = resultOf(text, 'live-touch');
    expect(textAt(text, result.locations[0])).toBe('K30');
    expect(hopsOf(result).map(({ location }) => textAt(text, location))).toEqual([
      'ignition',
      'read-codes',
      'ignition',
      'unplug',
    ]);
  });

  test('in the first line does not count a byte order mark', () => {
    const text = '\uFEFFformat: 1.5\ntitle: Example\nsteps: []\n';
    const [result] = resultsOf(text).filter(
      ({ locations }) => locations[0].physicalLocation.region.startLine === 1,
    );
    expect(result?.locations.map((location) => textAt(text, location))).toEqual(['1.5']);
  });

  test('covers the first of two places of the same name as a related location', () => {
    const text = example('live-touch').replace(
      'connectors:\n',
      'connectors:\n  stage-1: { contact: 2..15 mΩ }\n',
    );
    const { relatedLocations = [] } = resultOf(text, 'duplicate-id');
    expect(relatedLocations.map((location) => [textAt(text, location), location.message?.text])).toEqual([
      ['stage-1', 'The first one.'],
    ]);
  });
});

describe('the way to a finding in a log', () => {
  const result = resultOf(unsafe, 'live-touch');
  const hops = hopsOf(result);

  test('has every step in order, with its words and the way that is taken', () => {
    const json = ran(['check', '-', '--name', file, '--format', 'json'], unsafe).out;
    const { files } = JSON.parse(json) as {
      files: { findings: { key: string; path: { step: { number: number; line: number } }[] }[] }[];
    };
    const same = files[0]?.findings.find(({ key }) => key === result.partialFingerprints['findingKey/v1']);
    expect(hops.length).toBeGreaterThan(4);
    expect(hops.map(({ location }) => /^step (\d+), /.exec(location.message?.text ?? '')?.[1])).toEqual(
      same?.path.map(({ step }) => String(step.number)),
    );
    expect(hops.map(({ location }) => location.physicalLocation.region.startLine - 1)).toEqual(
      same?.path.map(({ step }) => step.line),
    );
    expect(hops.map(({ executionOrder }) => executionOrder)).toEqual(hops.map((_, index) => index + 1));
  });

  test('says which steps matter', () => {
    const weights = new Map(hops.map(({ location, importance }) => [location.message?.text, importance]));
    expect(weights.get('step 1, ignition on')).toBe('essential');
    expect(weights.get('step 2, read-codes control-unit')).toBe('unimportant');
    expect(weights.get('step 3, read stage-1-loop: else')).toBe('essential');
    expect(hops.at(-1)?.importance).toBe('essential');
    expect(hops.find(({ location }) => location.message?.text.endsWith(': else'))?.kinds).toEqual(['branch']);
  });

  test('is left out where the finding is seen at its step alone', () => {
    expect(resultOf(example('hands-in-text'), 'hands-in-text')).not.toHaveProperty('codeFlows');
  });

  test('goes into a routine a level deeper, and numbers its steps behind the call', () => {
    const [checked] = checkedTexts({ [file]: example('live-touch') });
    if (checked === undefined) throw new Error('a file was checked');
    const call: StepRef = { file, path: ['steps', 1], number: 2, calls: [] };
    const [finding] = checked.findings;
    if (finding === undefined) throw new Error('it is unsafe');
    const inRoutine = finding.trace?.hops.map((hop, index) => {
      if (index === 1) return { ...hop, taken: { kind: 'run' } as const };
      if (index !== 2) return hop;
      return { ...hop, step: { ...hop.step, number: 1, calls: [call] }, taken: { kind: 'return' } as const };
    });
    const changed = { ...finding, trace: { hops: inRoutine ?? [] } };
    const [result] = logOf([{ ...checked, findings: [changed] }]).runs[0].results;
    expect(
      hopsOf(result).map(({ location, nestingLevel, kinds = [] }) => [
        location.message?.text,
        nestingLevel,
        ...kinds,
      ]),
    ).toEqual([
      ['step 1, ignition on', 0],
      ['step 2, read-codes control-unit', 0, 'call'],
      ['step 2.1, ignition off, then back to step 4', 1, 'return'],
      ['step 4, unplug K30', 0],
    ]);
  });
});

describe('a fingerprint', () => {
  const keysOf = (text: string): readonly string[] =>
    resultsOf(text).map(({ partialFingerprints }) => partialFingerprints['findingKey/v1'] ?? '');

  test('is there for every result, and its own', () => {
    const keys = keysOf(unsafe);
    expect(keys.length).toBeGreaterThan(2);
    expect(new Set(keys).size).toBe(keys.length);
  });

  test.each([
    ['lines above', `# A line.\n\n${unsafe}`],
    ['lines between the steps', unsafe.replaceAll('\n  - ', '\n\n  # A line.\n  - ')],
    [
      'a step before the first',
      unsafe.replace(
        '\n  - ignition: on',
        '\n  - do: Read the whole card.\n    at: nothing\n  - ignition: on',
      ),
    ],
    ['line breaks of Windows', unsafe.replaceAll('\n', '\r\n')],
  ])('stays with %s', (_name, changed) => {
    expect(changed).not.toBe(unsafe);
    expect(keysOf(changed)).toEqual(keysOf(unsafe));
  });

  test('goes with its finding', () => {
    expect(keysOf(shipped)).toEqual([]);
  });
});

describe('a waived finding in a log', () => {
  const [open] = checkedTexts({ [file]: unsafe });
  if (open === undefined) throw new Error('a file was checked');
  const reason = 'The trainer has no battery.';
  const at = { file, path: ['title'], part: 'value' } as const;
  const findings = open.findings.map((one, index) =>
    index === 0 ? { ...one, waived: { reason, at } } : one,
  );
  const { results } = logOf([{ ...open, findings }]).runs[0];

  test('is suppressed in the source, with the reason and its place', () => {
    const [suppression] = results[0]?.suppressions ?? [];
    expect(suppression).toMatchObject({ kind: 'inSource', justification: reason });
    expect(suppression === undefined ? '' : textAt(unsafe, suppression.location)).toBe(
      /^title: (.*)$/m.exec(unsafe)?.[1],
    );
  });

  // 3.27.23 of SARIF 2.1.0: the suppressions of all results are null, or those of none.
  test('stands among others that say they are not', () => {
    expect(results.length).toBeGreaterThan(1);
    expect(results.slice(1).map(({ suppressions }) => suppressions)).toEqual(results.slice(1).map(() => []));
  });
});

describe('check --format sarif', () => {
  let folder = '';
  const names = ['Lüfter 100 % #1.procedure.yaml', 'sub/日本 {x}?.procedure.yaml', 'a:b.procedure.yaml'];
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'sarif-'));
    for (const name of names) {
      mkdirSync(dirname(join(folder, 'inside', name)), { recursive: true });
      writeFileSync(join(folder, 'inside', name), example('live-touch'));
    }
    writeFileSync(join(folder, 'outside.procedure.yaml'), example('repeats'));
  });
  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });

  const sarif = (...paths: readonly string[]) => {
    const inside = join(folder, 'inside');
    return ran(['check', ...paths, '--format', 'sarif'], '', { folder: inside });
  };

  test('names files from the folder that it runs in, as URIs that lead back to them', () => {
    const { out, exit } = sarif(folder);
    expect(exit).toBe(1);
    const { results, artifacts } = parsed(out).runs[0];
    expect(results).toHaveLength(4);
    const found = results.map(({ locations }) => locations[0].physicalLocation.artifactLocation);
    expect(found.map((artifact) => fileOf(artifact, join(folder, 'inside'))).sort()).toEqual(
      [...names.map((name) => join(folder, 'inside', name)), join(folder, 'outside.procedure.yaml')].sort(),
    );
    for (const artifact of found) {
      expect(artifact.uriBaseId).toBe(artifact.uri.startsWith('file:///') ? undefined : '%SRCROOT%');
      expect(artifacts[artifact.index ?? -1]?.location.uri).toBe(artifact.uri);
    }
    expect(found.filter(({ uri }) => uri.startsWith('file:///'))).toHaveLength(1);
  });

  test('is the same each time', () => {
    expect(sarif(folder).out).toBe(sarif(folder).out);
  });

  test('writes the log and nothing else to standard output', () => {
    const { out, err } = sarif(folder);
    expect(parsed(out).version).toBe('2.1.0');
    expect(err).toBe('');
  });

  test('of sound files has no results and was successful', () => {
    const path = join(folder, 'sound.yaml');
    writeFileSync(path, shipped);
    const { out, exit } = sarif(path);
    expect(exit).toBe(0);
    expect(parsed(out).runs[0]).toMatchObject({
      results: [],
      artifacts: [{ roles: ['analysisTarget'] }],
      invocations: [{ executionSuccessful: true, exitCode: 0 }],
    });
  });

  // 3.11.5 of SARIF 2.1.0: braces stand for arguments, and are doubled where they stand for themselves.
  test('of a file that could not be read says so in the log too', () => {
    const missing = join(folder, '{0}.procedure.yaml');
    const { out, err, exit } = sarif(missing, join(folder, 'outside.procedure.yaml'));
    expect(exit).toBe(2);
    const { results, invocations } = parsed(out).runs[0];
    expect(results.map(({ ruleId }) => ruleId)).toEqual(['repeats']);
    expect(invocations[0]).toMatchObject({ executionSuccessful: false, exitCode: 2 });
    const told = invocations[0].toolExecutionNotifications ?? [];
    expect(told.map(({ level }) => level)).toEqual(['error']);
    expect(`ohmwright: ${told[0]?.message.text.replaceAll('{{', '{').replaceAll('}}', '}') ?? ''}\n`).toBe(
      err,
    );
    expect(told[0]?.message.text).toContain('{{0}}');
    expect(parsed(sarif(missing).out).runs[0]).toMatchObject({ results: [], artifacts: [] });
  });

  test('is not there for windows', () => {
    const { exit, out, err } = ran(['windows', join(folder, 'outside.procedure.yaml'), '--format', 'sarif']);
    expect([exit, out]).toEqual([2, '']);
    expect(err).toBe('ohmwright: there is no format sarif: text, json\n');
  });
});
