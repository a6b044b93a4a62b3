/**
 * How much a stage may do for one file, counted and never timed, so that the same file always says the same. The unit is
 * about a step entered in one state: a microsecond or so.
 */
export interface Effort {
  /** Throws `TooMuchWork` where more is spent than there is. */
  readonly spend: (work: number) => void;
}

/** Thrown instead of working on for minutes. The analysis says so in place of what it would have found. */
export class TooMuchWork extends Error {
  constructor() {
    super('the file takes more work than is done for one');
    this.name = 'TooMuchWork';
  }
}

/** What the stages of a procedure of hundreds of steps and things need is a twentieth of it. */
export const mostWork = 20_000_000;

export function effortOf(most: number): Effort {
  let left = most;
  return {
    spend: (work) => {
      left -= work;
      if (left < 0) throw new TooMuchWork();
    },
  };
}
