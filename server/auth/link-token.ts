import { createHash, randomBytes } from "node:crypto";

/** A fresh token of 256 random bits for a single-use link, with the hash that is kept of it. */
export function newLinkToken(): { token: string; tokenHash: string } {
  const token = randomBytes(32).toString("base64url");
  return { token, tokenHash: hashOfToken(token) };
}

/** SHA-256 of a token, in hexadecimal. */
export function hashOfToken(token: string): string {
  return createHash("sha256").update(token).digest("hex");
}
