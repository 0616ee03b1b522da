import { gzipSync, strToU8 } from "fflate";
import { toBase85 } from "./base85.ts";

/** A text as the page carries it: gzip (RFC 1952), in base85. The same text always gives the same, since no time is in it. */
export const packed = (text: string): string => toBase85(gzipSync(strToU8(text), { level: 9, mtime: 0 }));
