/** FNV-1a of 64 bits (Fowler, Noll and Vo; offset and prime as in RFC 9923) over ASCII text, as 16 hex digits. */
export const fnv1a = (text: string): string => {
  let hash = 0xcbf29ce484222325n;
  for (let k = 0; k < text.length; k++) hash = BigInt.asUintN(64, (hash ^ BigInt(text.charCodeAt(k))) * 0x100000001b3n);
  return hash.toString(16).padStart(16, "0");
};
