import { useCallback, useEffect, useState } from "react";
import { unsentOf } from "@/components/voice/unsent-voice";
import type { ReviewDraft } from "@/server/domain/reviews/draft";

/** What can only be known by looking when it is asked, and what was found last. */
export interface LateMissing {
  missing: readonly string[];
  look: () => Promise<readonly string[]>;
}

type Lines = Pick<ReviewDraft, "corrections" | "keeps">;

/** The spoken notes of a draft that are on this device alone, as fragments for what is missing before it is sent. */
export function useUnsentNotes(roundId: string, { corrections, keeps }: Lines): LateMissing {
  const [missing, setMissing] = useState<readonly string[]>([]);
  const look = useCallback(async () => {
    const waiting = await unsentOf(roundId, Date.now());
    const found = [
      ...corrections.flatMap(({ id }, at) => (waiting.has(id) ? [waitFor(`correction ${at + 1}`)] : [])),
      ...keeps.flatMap(({ id }) => (waiting.has(id) ? [waitFor("a keep")] : [])),
    ];
    setMissing(found);
    return found;
  }, [roundId, corrections, keeps]);
  /* Once one is with the academy the draft names it, and it is not missing any more. */
  useEffect(() => {
    if (missing.length > 0) void look();
  }, [look, missing.length]);
  return { missing, look };
}

const waitFor = (line: string) =>
  `send the spoken note on ${line} again, or leave it: it is on this device alone`;
