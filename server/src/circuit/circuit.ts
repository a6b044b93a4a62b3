/** The door of this folder: everything that other folders need of it. */
export type { ConditionRanges, Conditions, Temperature } from './conditions.ts';
export { temperatureWithin } from './conditions.ts';
export type { Flow } from './flow.ts';
export { flowBetween } from './flow.ts';
export { guardedVoltage, guardedWindow } from './guarded.ts';
export type { Indication, Instrument } from './instrument.ts';
export { indicate } from './instrument.ts';
export type { RangedIndication } from './instrument-ranges.ts';
export { indicateInRanges } from './instrument-ranges.ts';
export type { SignedMeter, Voltmeter } from './instrument-voltage.ts';
export { indicateSigned, inputOf } from './instrument-voltage.ts';
export { withConsumers } from './consumers.ts';
export type { Consumer } from './consumers.ts';
export { currentWindow, senseOhms, sensedBy } from './current-window.ts';
export type { InCurrent } from './current-window.ts';
export { fuseResistance, fuseSpread } from './fuse.ts';
export { heaterSpread, ratedHeaterResistance } from './heater.ts';
export {
  coldResistance,
  filamentExponent,
  filamentResistance,
  hotResistance,
  hotToCold,
  ratedSpread,
} from './lamp.ts';
export { leakSeen, leakWindow } from './leak.ts';
export { wireBasis } from './materials.ts';
export type { Drawn } from './monte-carlo.ts';
export { drawReadings, middlePart } from './monte-carlo.ts';
export type { Element, Network, NetworkWindow } from './network.ts';
export { networkWindow } from './network.ts';
export type { Drive, OperatingPoint } from './operating-point.ts';
export { conflictsOf, operatingPoint, voltageBetween } from './operating-point.ts';
export type { Dependence, PartModel, Trend } from './parts.ts';
export { dependenceOf, resistanceAt, resistanceWithin } from './parts.ts';
export { platinumRange } from './platinum.ts';
export { nearestPreferred, usualTolerance } from './preferred-values.ts';
export type { Likely } from './root-sum-square.ts';
export { rootSumSquare } from './root-sum-square.ts';
export type { Shares } from './shares.ts';
export { sharesOfWidth } from './shares.ts';
export type { Edge } from './solver.ts';
export { resistanceBetween } from './solver.ts';
export type { Uncertain, UncertainReading } from './uncertain.ts';
export { uncertainResistance } from './uncertain.ts';
export { litVoltageBetween } from './under-power.ts';
export type { VoltageBetween } from './unstated.ts';
export { hotUnstated, innerMatters, windowOf, withInner } from './unstated.ts';
export type { UncertainVoltage } from './uncertain-voltage.ts';
export { sharesOfVoltage, uncertainVoltage } from './uncertain-voltage.ts';
export { voltageWindow } from './lit-window.ts';
export type { Source, VoltageWindow } from './voltage-window.ts';
