import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse, stringify } from 'yaml';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import type { Analysis } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import type { PlainStep } from '../oracle/plain-procedure.ts';
import { oracle } from '../oracle/oracle.ts';
import { differencesAsWritten } from '../oracle/told-in-routines.ts';
import { walked } from '../oracle/walk.ts';
import type { Called } from '../oracle/walk.ts';

/*
 * The shipped procedure with routines, spoiled as it is written: a step taken out of a routine or of the procedure, two
 * swapped, a wait shortened. The oracle walks the calls by itself and knows nothing of the engine.
 */

const shipped = parse(
  readFileSync(new URL('../../procedures/driver-airbag-resistance.procedure.yaml', import.meta.url), 'utf8'),
) as Called;

interface Mutant {
  readonly name: string;
  readonly procedure: Called;
}

type List = readonly [
  name: string,
  steps: readonly PlainStep[],
  put: (steps: readonly PlainStep[]) => Called,
];

const lists: readonly List[] = [
  ['steps', shipped.steps, (steps) => ({ ...shipped, steps })],
  ...Object.entries(shipped.routines).map(([name, routine]): List => [
    name,
    routine.steps,
    (steps) => ({ ...shipped, routines: { ...shipped.routines, [name]: { ...routine, steps } } }),
  ]),
];

const isStep = (step: PlainStep): boolean => !('section' in step);

const kinds: Readonly<Record<string, readonly Mutant[]>> = {
  'a step deleted': lists.flatMap(([name, steps, put]) =>
    steps.flatMap((step, at) =>
      isStep(step) && steps.length > 1
        ? [{ name: `${name} without ${at + 1}`, procedure: put(steps.toSpliced(at, 1)) }]
        : [],
    ),
  ),
  'two steps swapped': lists.flatMap(([name, steps, put]) =>
    steps.slice(0, -1).flatMap((step, at) => {
      const next = steps[at + 1];
      if (next === undefined || !isStep(step) || !isStep(next)) return [];
      return [
        {
          name: `${name}, ${at + 1} behind the next`,
          procedure: put(steps.with(at, next).with(at + 1, step)),
        },
      ];
    }),
  ),
  'a wait shortened': lists.flatMap(([name, steps, put]) =>
    steps.flatMap((step, at) =>
      'wait' in step
        ? [
            {
              name: `${name}, the wait of ${at + 1}`,
              procedure: put(steps.with(at, { ...step, wait: '1 min' })),
            },
          ]
        : [],
    ),
  ),
};

function analysed(procedure: object): Analysis {
  const text = stringify(procedure, { lineWidth: 0, aliasDuplicateObjects: false });
  return analyse(snapshotOf([{ id: 'mutant.procedure.yaml', text }]), 'mutant.procedure.yaml');
}

const unsafeRules = ['live-touch', 'short-wait', 'impossible', 'not-restored'];

function judged({ name, procedure }: Mutant): {
  readonly wrong: readonly string[];
  readonly isUnsafe: boolean;
} {
  const analysis = analysed(procedure);
  const findings = finish(analysis.findings('order'));
  const errors = findings.filter(({ severity }) => severity === 'error');
  // Something that names what was taken out: the mistake is told where it stands, and order is not asked for.
  if (analysis.procedure().findings.length > 0)
    return { wrong: errors.length > 0 ? [] : [name], isUnsafe: true };
  const { flat, written } = walked(procedure);
  const list = analysed(flat).procedure().value;
  const grave = oracle(list).filter(({ rule, isError }) => unsafeRules.includes(rule) && isError !== false);
  const missed = grave.filter(
    ({ rule, step, subject }) =>
      !errors.some(
        (error) =>
          error.rule === rule &&
          (error.subject ?? null) === subject &&
          error.step?.path.join('/') === written[(step ?? 0) - 1]?.place,
      ),
  );
  return {
    wrong: [
      ...missed.map(({ rule, step }) => `${name}: ${rule} at ${step ?? '-'} of the list is no error`),
      ...differencesAsWritten(findings, list, written).map((line) => `${name}: ${line}`),
    ],
    isUnsafe: grave.length > 0,
  };
}

describe('the procedure with routines', () => {
  it('is clean as shipped, as it is written and as a list', () => {
    expect(finish(analysed(shipped).findings('order'))).toEqual([]);
    expect(finish(analysed(walked(shipped).flat).findings('order'))).toEqual([]);
    expect(walked(shipped).flat.steps.length).toBeGreaterThan(80);
  });

  it.each(Object.entries(kinds))(
    'with %s: every unsafe one is an error where it is written',
    (kind, mutants) => {
      const all = mutants.map(judged);
      expect(all.flatMap(({ wrong }) => wrong)).toEqual([]);
      const unsafe = all.filter(({ isUnsafe }) => isUnsafe).length;
      expect(unsafe).toBeGreaterThan(0);
      console.log(`as written, ${kind}: ${unsafe} of ${mutants.length} mutants unsafe, all reported`);
    },
  );
});
