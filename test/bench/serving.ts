import { createReadStream, writeFileSync } from "node:fs";
import { serveFile } from "@/server/media/serve-clip";
import { compare, type Figure } from "./measure";

const BYTES = 64 * 1024 * 1024;

/** A whole clip of 64 MB through the clip route's stream, against the runtime's own file stream. */
export async function measureServing(folder: string): Promise<Figure> {
  const path = `${folder}/clip`;
  writeFileSync(path, Buffer.alloc(BYTES, 7));
  return compare(
    "64 MB of clip: the clip stream against the runtime's own",
    3,
    async () => {
      const answer = await serveFile(new Request("http://localhost/clip"), {
        path,
        contentType: "video/mp4",
        etag: '"bench"',
        byteCount: BYTES,
      });
      let total = 0;
      for await (const part of answer.body as unknown as AsyncIterable<Uint8Array>) total += part.length;
      if (total !== BYTES) throw new Error("The clip came cut.");
    },
    async () => {
      let total = 0;
      for await (const part of createReadStream(path, { highWaterMark: 256 * 1024 })) total += part.length;
      if (total !== BYTES) throw new Error("The file came cut.");
    },
  );
}
