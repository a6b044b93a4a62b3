const unit = '[µmkMG]?Ω|[µm]?[AFV]|kV|°C|mm²|m|s|min|h|K|digits?';

/**
 * What a line never breaks: a number with its sign and its unit, and the two terms of an accuracy. One group, so that
 * `split` keeps what it finds.
 */
export const amount = new RegExp(
  `((?:± |-)?\\d[\\d.]*-?[\\d.]* (?:${unit}|%(?: \\+ \\d[\\d.]* (?:${unit}))?)(?![\\p{L}\\d]))`,
  'u',
);
