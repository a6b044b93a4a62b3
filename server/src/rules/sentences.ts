import type { Procedure } from '../text/procedure.ts';
import { remembered } from '../text/remembered.ts';
import { clausesOf, isDeed } from './clauses.ts';
import type { Clause, Token } from './clauses.ts';
import { commandsIn, objectsOf, switchOrdersIn } from './commands-in.ts';
import type { Command, SwitchOrder } from './commands-in.ts';
import type { DoingWord } from './doing-words.ts';
import { piecesBy } from './text-names.ts';
import type { Meaning } from './text-names.ts';

/** A word of doing that a text has anywhere and in any form. */
export interface Deed {
  /** As it is written. */
  readonly said: string;
  /** null: an instrument is held to something. */
  readonly doing: DoingWord | null;
  /** The names in its clause: those behind it first. */
  readonly names: readonly { readonly name: string; readonly meaning: Meaning }[];
}

/** What a text says to people. The same text often stands beside many steps, and is read once. */
export interface Said {
  readonly names: readonly { readonly name: string; readonly meaning: Meaning }[];
  readonly commands: readonly Command[];
  readonly orders: readonly SwitchOrder[];
  readonly deeds: readonly Deed[];
}

export const sentencesOf: (procedure: Procedure) => (text: string) => Said = remembered(
  (procedure: Procedure) => {
    const pieces = piecesBy(procedure);
    const known = new Map<string, Said>();
    return (text: string): Said => {
      const said = known.get(text) ?? read(text);
      known.set(text, said);
      return said;
    };

    function read(text: string): Said {
      const clauses = clausesOf(pieces(text));
      // A sentence may go on in the next line, or a line may be one.
      const joined = text.includes('\n') ? clausesOf(pieces(text.replace(/\s*\n\s*/g, ' '))) : [];
      const both = [...clauses, ...joined];
      return {
        names: both.flatMap((clause) => objectsOf(clause, 0, 'any')),
        commands: [...commandsIn(clauses), ...commandsIn(joined)],
        orders: [...switchOrdersIn(clauses), ...switchOrdersIn(joined)],
        deeds: clauses.flatMap(deedsIn),
      };
    }
  },
);

function deedsIn(clause: Clause): readonly Deed[] {
  const { tokens } = clause;
  const deeds = tokens.flatMap(({ doing, spelled }, at): Deed[] => {
    if (doing === null || !isDeed(clause, at)) return [];
    const behind = objectsOf(clause, at + 1, 'any');
    const isMeant = !doing.needsName || (behind.length > 0 && tokens[at + 1]?.word !== 'to');
    return isMeant ? [{ said: spelled, doing, names: [...behind, ...objectsOf(clause, 0, 'any')] }] : [];
  });
  const held = heldAt(tokens);
  if (deeds.length > 0 || held < 0 || held >= clause.passedFrom) return deeds;
  return [{ said: `with ${tokens[held]?.spelled ?? ''}`, doing: null, names: objectsOf(clause, 0, 'any') }];
}

/** `with an ohmmeter`: the place of the instrument; -1: none. */
function heldAt(tokens: readonly Token[]): number {
  return tokens.findIndex(
    ({ word }, at) =>
      /^(?:ohm|multi|volt|am)meter$|^dmm$|^megger$/.test(word) &&
      tokens.slice(Math.max(0, at - 4), at).some((before) => before.word === 'with'),
  );
}
