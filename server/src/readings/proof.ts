import { formatOnDisplay, formatWait, formatWindow, roundOutward } from '../quantity/quantity.ts';
import { owedBy, voltageLeft } from '../bench/owed.ts';
import type { Span } from '../quantity/quantity.ts';
import type { HighVoltage, MeterRange, Multimeter, Procedure, Source } from '../model/procedure.ts';
import { isHighVoltage } from '../model/source-kinds.ts';

/** What an instrument can show in one range: volts, its error limit as a fraction of the reading and a constant. */
interface Scale {
  readonly range: Span;
  readonly fraction: number;
  readonly constant: number;
  readonly resolution: number;
}

function scaleOf(meter: MeterRange | null): Scale | null {
  if (meter === null) return null;
  const { range, accuracy, resolution } = meter;
  if (range === null || accuracy === null || resolution === null) return null;
  const constant = accuracy.constant + accuracy.digits * resolution;
  return { range, fraction: accuracy.fraction, constant, resolution };
}

/**
 * A reading below this proves that the voltage is below the safe one, whatever the error of the instrument: volts,
 * rounded down to its display. Zero or less: no reading proves it. null: a value could not be read.
 */
export function proofLimit({ safeBelow }: HighVoltage, { voltage }: Multimeter): number | null {
  const scale = scaleOf(voltage);
  if (scale === null || safeBelow === null) return null;
  const shown = safeBelow.least * (1 - scale.fraction) - scale.constant;
  const rounded = roundOutward({ least: shown, most: null }, scale.resolution);
  return rounded === 'open' ? null : rounded.least;
}

/** The texts of one proof that hints and cards print. */
export interface PrintedProof {
  readonly index: number;
  /**
   * The circuit is without voltage only between this with a minus and with a plus: `59.5 V`. null: no reading shows it, or
   * it is not known.
   */
  readonly limit: string | null;
  /** The most that the stated reserve leaves after the wait that is owed, rounded up: `3.6 V`. null: no reserve is stated. */
  readonly residual: { readonly most: string; readonly after: string } | null;
  /** What the instrument shows on the known source, rounded outward: `12.4..12.8 V`. null: not known. */
  readonly known: string | null;
}

/** The proofs of a procedure, in the order of its steps. */
export function printedProofs({ steps, sources, multimeters }: Procedure): readonly PrintedProof[] {
  return steps.flatMap((step, index): readonly PrintedProof[] => {
    if (step.verb !== 'prove-dead') return [];
    const meter = multimeters.get(step.with);
    const source = sources.get(step.source);
    const known = printedOnKnown(sources.get(step.known), meter);
    return [{ index, limit: printedLimit(source, meter), residual: printedResidual(source, meter), known }];
  });
}

function printedLimit(source: Source | undefined, meter: Multimeter | undefined): string | null {
  const resolution = meter?.voltage?.resolution ?? null;
  if (!isHighVoltage(source) || meter === undefined || resolution === null) return null;
  const most = proofLimit(source, meter);
  return most === null || most <= 0 ? null : formatOnDisplay(most, resolution, 'voltage');
}

function printedResidual(
  source: Source | undefined,
  meter: Multimeter | undefined,
): PrintedProof['residual'] {
  const resolution = meter?.voltage?.resolution ?? null;
  if (source === undefined || resolution === null) return null;
  const { reserve } = source;
  if (reserve === null || reserve === 'unstated') return null;
  const { seconds } = owedBy(source);
  const left = roundOutward({ least: null, most: voltageLeft(reserve, seconds) }, resolution);
  if (left === 'open' || left.most === null) return null;
  return { most: formatOnDisplay(left.most, resolution, 'voltage'), after: formatWait(seconds) };
}

function printedOnKnown(known: Source | undefined, meter: Multimeter | undefined): string | null {
  const scale = scaleOf(meter?.voltage ?? null);
  const volts = known?.voltage ?? null;
  if (scale === null || volts === null) return null;
  const { fraction, constant, resolution } = scale;
  const least = Math.max(0, volts.least * (1 - fraction) - constant);
  const most = volts.most * (1 + fraction) + constant;
  return formatWindow(roundOutward({ least, most }, resolution), resolution, 'voltage');
}

/** Why an instrument cannot prove a source dead; null: it can, or a value could not be read. */
export function unfitFor(
  source: HighVoltage,
  known: Source,
  { voltage }: Multimeter,
  limit: number | null,
): 'range' | 'accuracy' | 'known' | null {
  const scale = scaleOf(voltage);
  if (scale === null) return null;
  const { range, fraction, constant } = scale;
  if (source.voltage !== null && source.voltage.most > range.most) return 'range';
  if (limit !== null && limit <= range.least) return 'accuracy';
  if (known.voltage === null) return null;
  // On a dead circuit it can show its constant error: on the known source it must surely show more.
  const shown = known.voltage.least * (1 - fraction) - constant;
  return known.voltage.most > range.most || shown <= Math.max(constant, range.least) ? 'known' : null;
}
