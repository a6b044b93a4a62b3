/** The door of this folder: everything that other folders need of it. */
export type { Dimension, Shape } from './dimensions.ts';
export { describeQuantity, nameOf, ratingDescription, wireDescription } from './dimensions.ts';
export type { Parsed } from './parsed.ts';
export { parseAccuracy } from './parse-accuracy.ts';
export { parseLimit } from './parse-limit.ts';
export { parseExact, parseSpan } from './parse-span.ts';
export type { Wire } from './parse-wire.ts';
export { parseRating, parseWire } from './parse-wire.ts';
export {
  formatAccuracy,
  formatLimit,
  formatDigits,
  formatQuantity,
  formatSpan,
  formatWait,
  formatWire,
} from './print.ts';
export type { Accuracy, Limit, Span } from './span.ts';
export { isMoreThanTenth } from './tenth.ts';
export type { Window } from './window.ts';
export { formatOnDisplay, formatWindow, roundInward, roundOutward } from './window.ts';
