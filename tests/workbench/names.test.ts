import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { describeWith } from '../needs.ts';
import { lacksWorkbench, packed } from './paths.ts';
import { closeEverything, languageOf, openFile, problems, see } from './person.ts';
import type { Workbench } from './workbench.ts';
import { startWorkbench } from './workbench.ts';

/* By which names the editor knows our files: by each of the six it speaks our language, and a mistake is found. */

const asJson = '{ "format": 1, "tilte": "A key that is not known" }\n';
const asYaml = 'format: 1\ntilte: A key that is not known\n';

const files: Readonly<Record<string, string>> = {
  'one.procedure.json': asJson,
  'one.parts.json': asJson,
  'one.procedure.yml': asYaml,
  'one.parts.yml': asYaml,
  'one.procedure.yaml': asYaml,
  'one.parts.yaml': asYaml,
  'other.json': asJson,
  'other.yaml': asYaml,
};

describeWith(lacksWorkbench(), 'the names of files in the editor', specs);

function specs(): void {
  let workbench: Workbench;
  beforeAll(async () => {
    workbench = await startWorkbench(packed, files);
  });
  afterEach(() => closeEverything(workbench));
  afterAll(() => workbench.stop());

  test.each(Object.keys(files).filter((name) => name.startsWith('one.')))(
    '%s is of our language, and its mistake is found',
    async (name) => {
      await openFile(workbench, name);
      const rows = await see(
        workbench,
        'unknown-key among the problems',
        () => problems(workbench),
        (seen) => seen.some((row) => row.includes('unknown-key')),
      );
      expect(rows.some((row) => row.includes('tilte'))).toBe(true);
      expect(await languageOf(workbench)).toBe('Ohmwright procedure');
    },
  );

  test.each([
    ['other.json', 'JSON'],
    ['other.yaml', 'YAML'],
  ])('%s is left to the editor', async (name, language) => {
    await openFile(workbench, name);
    expect(await languageOf(workbench)).toBe(language);
  });
}
