import { gunzipSync, strFromU8 } from "fflate";
import { fromBase85 } from "../src/page/base85.ts";

/** The data that a page carries in its element of type application/json. */
export const dataIn = (page: string): unknown =>
  JSON.parse(strFromU8(gunzipSync(fromBase85(/json">(.*)<\/script>/s.exec(page)![1]!))));
