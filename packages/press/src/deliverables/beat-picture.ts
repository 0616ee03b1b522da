import { type BoardOptions, boardSvg } from "../board/board-svg.ts";
import { lettersOf } from "../step/letters.ts";
import type { Picture } from "./pictures.ts";
import type { Show } from "./show.ts";
import { type StagedBeat, stagedBeats } from "./standing.ts";

/** The board just before a beat, with the reason of the beat drawn and what follows from it. */
export const beatSvg = ({ board }: Pick<Show, "board">, staged: StagedBeat, style: BoardOptions): string => {
  const { beat, steps, before } = staged;
  return boardSvg(board, {
    label: `The board at beat ${beat.n}, ${beat.name}: ${beat.placed}`,
    sentences: false,
    ...style,
    written: before,
    step: steps,
    letters: lettersOf(beat.parts),
    writes: beat.writes,
  });
};

/** One beat as a picture of a pack. */
export const beatPicture = (n: number): Picture => ({
  name: `beat-${String(n).padStart(2, "0")}`,
  purpose: `Beat ${n} with its reason drawn`,
  heed: "It gives digits of the solution away.",
  svg: (show, style) => {
    const staged = stagedBeats(show).find(({ beat }) => beat.n === n);
    if (!staged) throw new Error(`there is no beat ${n}`);
    return beatSvg(show, staged, { ...style, painted: true });
  },
});
