/**
 * Bytes as text, five signs to four bytes (base64 takes a third more than the bytes, this a quarter): the way of Ascii85,
 * with signs that stand for themselves in a script element of HTML.
 */
const signs = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz!#$%()*+,-.:;=?@[]^_{}~";

/** Signs of the number's four bytes, the highest first. */
const written = (number: number): string => {
  let text = "";
  for (let rest = number, k = 0; k < 5; k++, rest = Math.floor(rest / 85)) text = signs[rest % 85] + text;
  return text;
};

/** A last group of n bytes, fewer than four, is n + 1 signs. */
export const toBase85 = (bytes: Uint8Array): string => {
  let text = "";
  for (let at = 0; at < bytes.length; at += 4) {
    const [a = 0, b = 0, c = 0, d = 0] = bytes.subarray(at, at + 4);
    text += written(((a << 24) | (b << 16) | (c << 8) | d) >>> 0);
  }
  return text.slice(0, text.length - ((4 - (bytes.length % 4)) % 4));
};

/** The bytes of a text that `toBase85` has made. */
export const fromBase85 = (text: string): Uint8Array<ArrayBuffer> => {
  const bytes = new Uint8Array(Math.floor((text.length * 4) / 5));
  const view = new DataView(new ArrayBuffer(4));
  for (let at = 0; at < text.length; at += 5) {
    let number = 0;
    for (let k = at; k < at + 5; k++) number = number * 85 + (k < text.length ? signs.indexOf(text[k]!) : 84);
    view.setUint32(0, number);
    const from = (at / 5) * 4;
    for (let k = 0; k < 4 && from + k < bytes.length; k++) bytes[from + k] = view.getUint8(k);
  }
  return bytes;
};
