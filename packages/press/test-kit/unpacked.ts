import { gunzipSync, strFromU8 } from "fflate";
import { fromBase85 } from "../src/page/base85.ts";

/** The data that a page carries. */
export const dataIn = (page: string): unknown =>
  JSON.parse(strFromU8(gunzipSync(fromBase85(/id="puzzle">(.*?)<\/script>/s.exec(page)![1]!))));
