import type { Id, Step } from '../model/procedure.ts';
import { changesOf } from './changes.ts';
import type { Change } from './changes.ts';

/** Ignition, and which of the watched sources are disconnected (sorted). */
export interface Power {
  readonly ignitionOn: boolean;
  readonly disconnected: readonly Id[];
}

/** Ignition off, every source connected. */
export const powerAtStart: Power = { ignitionOn: false, disconnected: [] };

/** A source is off when it is disconnected and the ignition is off. */
export function isOff(power: Power, source: Id): boolean {
  return !power.ignitionOn && power.disconnected.includes(source);
}

/**
 * The states that a step's verb goes through, the last one being the state it leaves; empty where the verb switches
 * neither the ignition nor a watched source.
 */
export function switching(power: Power, step: Step, watched: readonly Id[]): readonly Power[] {
  const passed: Power[] = [];
  for (const change of changesOf(step))
    for (const one of passing(passed.at(-1) ?? power, change, watched)) passed.push(one);
  return passed;
}

function passing(power: Power, change: Change, watched: readonly Id[]): readonly Power[] {
  switch (change.of) {
    case 'ignition':
      if (change.to === 'cycle') return [withIgnition(power, false), withIgnition(power, true)];
      return [withIgnition(power, change.to === 'on')];
    case 'source':
      return watched.includes(change.id) ? [withSource(power, change.id, change.isConnected)] : unswitched;
    case 'connector':
    case 'load':
    case 'things':
    case 'codes':
    case 'time':
      return unswitched;
  }
}

const unswitched: readonly Power[] = [];

function withIgnition(power: Power, ignitionOn: boolean): Power {
  return power.ignitionOn === ignitionOn ? power : { ...power, ignitionOn };
}

function withSource(power: Power, source: Id, connected: boolean): Power {
  const { disconnected } = power;
  if (disconnected.includes(source) !== connected) return power;
  return {
    ...power,
    disconnected: connected ? disconnected.filter((id) => id !== source) : [...disconnected, source].sort(),
  };
}

/** The state of the power after a step; the same object where the step does not switch it. */
export function powerAfter(power: Power, step: Step, watched: readonly Id[]): Power {
  return switching(power, step, watched).at(-1) ?? power;
}

/** Those of the sources that were off and stop being off at this step. */
export function returning(power: Power, step: Step, watched: readonly Id[]): readonly Id[] {
  const passed = [power, ...switching(power, step, watched)];
  const off = passed.map((one) => new Set(one.ignitionOn ? [] : one.disconnected));
  return watched.filter((source) =>
    off.some((before, at) => before.has(source) && off[at + 1]?.has(source) === false),
  );
}

/** A monitor is powered while the ignition is on and a source that feeds it is connected. */
export function isPowered(power: Power, feeding: readonly Id[]): boolean {
  return power.ignitionOn && feeding.some((source) => !power.disconnected.includes(source));
}

export function powerKey(power: Power): string {
  return `${power.ignitionOn ? '1' : '0'}${power.disconnected.join()}`;
}
