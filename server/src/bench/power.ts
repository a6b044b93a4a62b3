import type { Id, Step } from '../text/procedure.ts';
import { changesOf } from './changes.ts';

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
  for (const change of changesOf(step)) {
    const before = passed.at(-1) ?? power;
    switch (change.of) {
      case 'ignition':
        if (change.to === 'cycle') passed.push(withIgnition(before, false), withIgnition(before, true));
        else passed.push(withIgnition(before, change.to === 'on'));
        break;
      case 'source':
        if (watched.includes(change.id)) passed.push(withSource(before, change.id, change.isConnected));
        break;
      case 'connector':
      case 'load':
      case 'things':
      case 'codes':
      case 'time':
        break;
    }
  }
  return passed;
}

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

/** Whether, at this step, a source that was off stops being off. */
export function powerReturns(power: Power, step: Step, source: Id, watched: readonly Id[]): boolean {
  let before = power;
  for (const after of switching(power, step, watched)) {
    if (isOff(before, source) && !isOff(after, source)) return true;
    before = after;
  }
  return false;
}

/** A monitor is powered while the ignition is on and a source that feeds it is connected. */
export function isPowered(power: Power, feeding: readonly Id[]): boolean {
  return power.ignitionOn && feeding.some((source) => !power.disconnected.includes(source));
}

export function powerKey(power: Power): string {
  return `${power.ignitionOn ? '1' : '0'}${power.disconnected.join()}`;
}
