/** The door of this folder: everything that other folders need of it. */
export type { ConditionRanges, Conditions, Temperature } from './conditions.ts';
export { guardedWindow } from './guarded.ts';
export type { Indication, Instrument } from './instrument.ts';
export { indicate } from './instrument.ts';
export type { Element, Network } from './network.ts';
export { networkWindow } from './network.ts';
export type { Dependence, PartModel, Trend } from './parts.ts';
export { dependenceOf, resistanceAt, resistanceWithin } from './parts.ts';
export type { Edge } from './solver.ts';
export { resistanceBetween } from './solver.ts';
