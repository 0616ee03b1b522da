import { basename, join } from "node:path";
import type { Asked } from "../../command.ts";
import { badUsage } from "../../faults.ts";

/** The folder that `--to` names, or out/NAME after the puzzle's file. */
export const folderFor = ([file]: Asked["words"], to: string | boolean | undefined, ending = ""): string => {
  if (to === "") throw badUsage("--to takes a folder.", { read: "--to", right: "the name of a folder" });
  return typeof to === "string" ? to : join("out", basename(file!).replace(/(\.puzzle)?\.[^.]+$/, "") + ending);
};
