/** The body of a request, or null once it is longer than allowed; what comes after that is not read. */
export async function bodyWithin(
  request: Request,
  maxBytes: number,
): Promise<Uint8Array<ArrayBuffer> | null> {
  const parts: Uint8Array[] = [];
  let byteCount = 0;
  for await (const part of request.body ?? []) {
    byteCount += part.byteLength;
    if (byteCount > maxBytes) return null;
    parts.push(part);
  }
  return Buffer.concat(parts);
}
