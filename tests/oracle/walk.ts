import type { PlainProcedure, PlainStep } from './plain-procedure.ts';

/*
 * What somebody does who works by a procedure with routines: at each call he goes into the routine, keeps in mind where he
 * came from and what was given, and returns. Written down in the order of the file, this is a flat list of steps.
 */

export interface PlainRoutine {
  readonly needs?: Readonly<Record<string, string>>;
  readonly steps: readonly PlainStep[];
}

export interface Called extends PlainProcedure {
  readonly routines: Readonly<Record<string, PlainRoutine>>;
}

/** Where a step is written, its number as it is printed, and the calls that lead to it, outermost first. */
export interface WrittenAt {
  readonly place: string;
  readonly printed: string;
  readonly calls: readonly { readonly place: string; readonly printed: string }[];
}

export interface Walked {
  readonly flat: PlainProcedure;
  /** By step of the flat list. */
  readonly written: readonly WrittenAt[];
}

/** One list in work: whose steps these are, what its names stand for, and the calls that led here. */
interface Frame {
  readonly list: string;
  readonly steps: readonly PlainStep[];
  readonly given: Readonly<Record<string, string>>;
  readonly calls: WrittenAt['calls'];
  /** Of each of its ids the place in the flat list, once it is known. */
  readonly ids: Map<string, number>;
}

/** Texts name nothing, and outcomes lead to steps. */
const unfilled: ReadonlySet<string> = new Set([
  'outcomes',
  'go',
  'id',
  'run',
  'note',
  'why',
  'notice',
  'caution',
  'warning',
  'danger',
  'inspect',
  'do',
  'stop',
]);

/** A value with the names of the routine replaced: `where.monitor` and `where` alike. Of a side a verb takes the connector. */
function filled(value: unknown, given: Frame['given'], asConnector: boolean): unknown {
  if (Array.isArray(value)) return value.map((one) => filled(one, given, asConnector));
  if (typeof value !== 'string') return value;
  const [name = '', ...rest] = value.split('.');
  const stands = given[name];
  if (stands === undefined) return value;
  return [asConnector ? stands.split('.')[0] : stands, ...rest].join('.');
}

const connectorVerbs: ReadonlySet<string> = new Set([
  'unlock',
  'unplug',
  'plug',
  'replace',
  'conclude',
  'leaves',
]);

function filledStep(step: PlainStep, given: Frame['given']): PlainStep {
  const entries = Object.entries(step).map(([key, value]): [string, unknown] => {
    if (key === 'outcomes' && Array.isArray(step.read))
      return [
        key,
        Object.fromEntries(
          Object.entries(value as object).map(([loop, to]) => [given[loop] ?? loop, to as unknown]),
        ),
      ];
    if ((key === 'at' || key === 'of') && ('do' in step || 'inspect' in step))
      return [key, filled(value, given, true)];
    return [key, unfilled.has(key) ? value : filled(value, given, connectorVerbs.has(key))];
  });
  return Object.fromEntries(entries);
}

interface Laid {
  readonly step: PlainStep;
  readonly frame: Frame;
}

export function walked(procedure: Called): Walked {
  const laid: Laid[] = [];
  const written: WrittenAt[] = [];
  const visit = (frame: Frame): void => {
    let number = 0;
    for (const [at, step] of frame.steps.entries()) {
      if ('section' in step) continue;
      number += 1;
      if (typeof step.id === 'string') frame.ids.set(step.id, laid.length);
      const outer = frame.calls.at(-1)?.printed;
      const here = {
        place: `${frame.list}/${at}`,
        printed: outer === undefined ? String(number) : `${outer}.${number}`,
      };
      if (typeof step.run === 'string') {
        const given = Object.fromEntries(
          Object.entries((step.given ?? {}) as Readonly<Record<string, string>>).map(([need, what]) => [
            need,
            String(filled(what, frame.given, false)),
          ]),
        );
        visit({
          list: `routines/${step.run}/steps`,
          steps: procedure.routines[step.run]?.steps ?? [],
          given,
          calls: [...frame.calls, here],
          ids: new Map(),
        });
        continue;
      }
      laid.push({ step: filledStep(step, frame.given), frame });
      written.push({ ...here, calls: frame.calls });
    }
  };
  visit({ list: 'steps', steps: procedure.steps, given: {}, calls: [], ids: new Map() });
  const steps = laid.map(({ step, frame }, index): PlainStep => {
    const led = (to: unknown): unknown =>
      typeof to === 'string'
        ? to === 'next'
          ? 'next'
          : `flat-${frame.ids.get(to) ?? -1}`
        : Object.fromEntries(Object.entries(to as object).map(([name, one]) => [name, led(one)]));
    return {
      ...step,
      id: `flat-${index}`,
      ...('go' in step ? { go: led(step.go) } : {}),
      ...('outcomes' in step ? { outcomes: led(step.outcomes) } : {}),
    };
  });
  const flat = { ...procedure, steps };
  Reflect.deleteProperty(flat, 'routines');
  return { flat, written };
}
