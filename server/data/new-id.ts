import { randomBytes } from "node:crypto";

const ALPHABET = "0123456789abcdefghjkmnpqrstvwxyz";

/** A fresh id: the prefix of its table, an underscore and 20 random base-32 characters (100 bits). */
export function newId(prefix: string): string {
  let id = "";
  for (const byte of randomBytes(20)) id += ALPHABET[byte % 32];
  return `${prefix}_${id}`;
}
