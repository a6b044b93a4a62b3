const unit = '[µmkMG]?Ω|[µm]?[AFV]|kV|°C|mm²|m|s|min|h|K|digits?';

/** No number has more: without an end each digit of a long row of them would be looked at from each other. */
const digits = '[\\d.]{0,40}';

/**
 * What a line never breaks: a number with its sign and its unit, and the two terms of an accuracy. One group, so that
 * `split` keeps what it finds.
 */
export const amount = new RegExp(
  `((?:± |[-+])?\\d${digits}(?:-${digits})? (?:${unit}|%(?: \\+ \\d${digits} (?:${unit}))?)(?![\\p{L}\\d]))`,
  'u',
);
