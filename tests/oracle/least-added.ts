import type { Id, Procedure } from '../../server/src/model/procedure.ts';
import type { Resistance, Temperature } from '../../server/src/model/resistance.ts';
import { netPieces } from './network.ts';

/*
 * How much added resistance counts: a tenth of the least nominal one of all that a circuit is made for. Not counted is
 * what only leads there.
 */

const LEADS_THERE: readonly string[] = ['cable', 'rotary-coupling', 'series', 'switch'];

/** In a loop that a control unit reads, in ohms. */
const LEAST_IN_LOOP = 1;

function nominalCelsius({ ambient, entries }: Procedure, temperature: Temperature): number | null {
  if (temperature === 'ambient') return ambient.nominal;
  if ('stated' in temperature) return temperature.stated.nominal;
  return entries.get(temperature.entry)?.range?.nominal ?? null;
}

/** Of the kinds that random procedures draw. null: not known. */
function nominalOhms(procedure: Procedure, resistance: Resistance | null): number | null {
  if (resistance?.kind === 'stated' || resistance?.kind === 'preferred') return resistance.resistance.nominal;
  if (resistance?.kind !== 'thermistor' && resistance?.kind !== 'platinum') return null;
  const t = nominalCelsius(procedure, resistance.temperature);
  if (t === null) return null;
  if (resistance.kind === 'platinum')
    return (
      resistance.r0 * (1 + 3.9083e-3 * t - 5.775e-7 * t ** 2 + (t < 0 ? -4.183e-12 * (t - 100) * t ** 3 : 0))
    );
  const { curve } = resistance;
  if (!('r25' in curve)) return null;
  return curve.r25.nominal * Math.exp(curve.beta.nominal * (1 / (t + 273.15) - 1 / 298.15));
}

/** null: nothing here is sized. */
function tenthOfLeast(procedure: Procedure, parts: readonly Id[], loads: readonly Id[]): number | null {
  const sized = parts.filter((id) => !LEADS_THERE.includes(procedure.parts.get(id)?.kind ?? 'cable'));
  const each = [
    ...sized.map((id) => nominalOhms(procedure, procedure.parts.get(id)?.resistance ?? null)),
    ...loads.map((id) => nominalOhms(procedure, procedure.loads.get(id)?.resistance ?? null)),
  ].filter((ohms) => ohms !== null);
  return each.length === 0 ? null : Math.min(...each) / 10;
}

/** Loads that some step puts into a loop. */
function loadsEver(procedure: Procedure, loop: Id): Id[] {
  return procedure.steps.flatMap((step) => {
    if (step.verb !== 'fit' && step.verb !== 'move') return [];
    const place = step.verb === 'fit' ? step.at : step.to;
    return place.loop === loop ? [step.load] : [];
  });
}

/** The least added resistance that counts in a loop, in ohms. */
export function leastAddedIn(procedure: Procedure, loop: Id): number {
  const elements = procedure.loops.get(loop)?.elements ?? [];
  const parts = elements.flatMap(({ kind, id }) => (kind === 'part' ? [id] : []));
  return Math.max(LEAST_IN_LOOP, tenthOfLeast(procedure, parts, loadsEver(procedure, loop)) ?? 0);
}

/** The same at a node of the network. null: none counts. */
export function leastAddedAt(procedure: Procedure, nodes: readonly string[]): number | null {
  const piece = netPieces(procedure).find((one) => nodes.some((node) => one.nodes.has(node)));
  if (piece === undefined) return null;
  const parts = [...piece.members].filter((id) => procedure.parts.has(id));
  return tenthOfLeast(procedure, parts, []);
}
