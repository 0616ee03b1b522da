import { existsSync, readFileSync } from "node:fs";
import { Script } from "node:vm";

/**
 * A bundled program as a function of `module`, `require` and `__filename`. The code that V8 compiled when it was built is taken
 * from beside it, which spares a good part of a start; where there is none, or it is another V8's, it is compiled anew.
 */
export const compiled = (program: string): Script => {
  const cache = `${program}.cache`;
  return new Script(`(function (module, require, __filename) {${readFileSync(program, "utf8")}\n})`, {
    filename: program,
    ...(existsSync(cache) ? { cachedData: readFileSync(cache) } : {}),
  });
};
