import type { Procedure } from '../../model/procedure.ts';
import { remembered } from '../../model/remembered.ts';
import { clausesOf, isDeed } from './clauses.ts';
import type { Clause, Token } from './clauses.ts';
import { commandsIn, objectsOf, switchOrdersIn } from './commands-in.ts';
import type { Command, SwitchOrder } from './commands-in.ts';
import { isDeterminer } from './doing-words.ts';
import type { DoingWord } from './doing-words.ts';
import { piecesBy } from './text-names.ts';
import type { Meaning } from './text-names.ts';

/** The first word of doing that a clause has anywhere and in any form. */
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
        deeds: clauses.flatMap(deedIn),
      };
    }
  },
);

/** The first deed of a clause. */
function deedIn(clause: Clause): readonly Deed[] {
  const { tokens } = clause;
  const lastName = tokens.findLastIndex(({ meaning }) => meaning !== null);
  const at = tokens.findIndex(
    ({ doing }, place) =>
      doing !== null &&
      isDeed(clause, place) &&
      (!doing.needsName ||
        (lastName > place &&
          tokens[place + 1]?.word !== 'to' &&
          !isDeterminer(tokens[place - 1]?.word ?? ''))),
  );
  if (at >= 0) {
    const names = [...objectsOf(clause, at + 1, 'any'), ...objectsOf(clause, 0, 'any')];
    return [{ said: tokens[at]?.spelled ?? '', doing: tokens[at]?.doing ?? null, names }];
  }
  const held = heldAt(tokens);
  if (held < 0 || held >= clause.passedFrom) return [];
  return [{ said: `with ${tokens[held]?.spelled ?? ''}`, doing: null, names: objectsOf(clause, 0, 'any') }];
}

/** `with an ohmmeter`, `use a multimeter`: the place of the instrument; -1: none. */
function heldAt(tokens: readonly Token[]): number {
  return tokens.findIndex(
    ({ word }, at) =>
      /^(?:ohm|multi|volt|am)meter$|^dmm$|^megger$/.test(word) &&
      tokens.slice(Math.max(0, at - 4), at).some((before) => before.word === 'with' || before.word === 'use'),
  );
}
