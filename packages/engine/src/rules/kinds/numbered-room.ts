import { inDoorway } from "../../marks/outside.ts";
import { whole } from "../bodies/fields.ts";
import { type OutsideBody, outside } from "../bodies/outside.ts";
import { faulty, type Kind } from "../contract.ts";
import { canEnd, lineSaid, type OutsideClue, outsideClue } from "../outside-clue.ts";

interface NumberedRoomBody extends OutsideBody {
  readonly digit: number;
}
interface NumberedRoom extends OutsideClue {
  readonly digit: number;
}

const unread = -1;
const found = 0;

/** The state is the place, from 1, in which the digit must stand. */
const reading = ({ cells, digit: wanted }: NumberedRoom) => ({
  cells,
  start: unread,
  next: (read: number | string, digit: number, index: number): number | undefined => {
    const room = read === unread ? digit : Number(read);
    if (read === unread && (room < 1 || room > cells.length)) return undefined;
    if (room !== index + 1) return room;
    return digit === wanted ? found : undefined;
  },
  ok: (state: number | string): boolean => state === found,
});

export const numberedRoom: Kind<NumberedRoomBody, NumberedRoom> = {
  name: "numbered-room",
  body: outside({ numbers: { digit: whole({ most: 31 }) }, from: true }),
  resolve: (body, setting) => {
    const clue = outsideClue(body, setting);
    if ("faults" in clue) return clue;
    const made = { ...clue, digit: body.digit };
    if (canEnd(reading(made), setting)) return made;
    const right = `a digit that can stand in ${lineSaid(clue.line, setting)} where the first one says`;
    return faulty({ at: ["digit"], read: String(body.digit), right });
  },
  scopes: (room) => [reading(room)],
  terms: (room) => [{ term: "automaton", owner: room.id, ...reading(room) }],
  marks: ({ stand, digit }) => inDoorway(stand, String(digit)),
  words: ({ cells, digit }) => ({
    rule: "A digit in a doorway stands in the Nth cell from its side. N is the digit in the first cell.",
    title: "Numbered rooms",
    noun: "numbered room",
    plural: "numbered rooms",
    called: `numbered room of ${digit}`,
    at: cells,
    holds: `hold the ${digit} where the first one says`,
  }),
  relabels: "none",
};
