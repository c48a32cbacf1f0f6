"use client";
import { useCallback, useEffect, useRef, useState } from "react";
import { keepVoice } from "./voice-address";

/** What was said and is not kept yet: on its way, or turned away with the reason. */
export type Keeping =
  | { kind: "none" }
  | { kind: "sending"; spoken: Blob }
  | { kind: "refused"; spoken: Blob; sentence: string };

/** Keeps what was said at once, and holds on to it here until the academy has it. */
export function useKeptVoice(roundId: string, onKept: (voiceId: string) => void) {
  const [keeping, setKeeping] = useState<Keeping>({ kind: "none" });
  const latest = useRef(onKept);
  latest.current = onKept;
  const last = useRef<Blob | null>(null);

  const keep = useCallback(
    async (spoken: Blob) => {
      last.current = spoken;
      setKeeping({ kind: "sending", spoken });
      const answer = await keepVoice(roundId, spoken);
      if (last.current !== spoken) return;
      if ("sentence" in answer) return setKeeping({ kind: "refused", spoken, sentence: answer.sentence });
      setKeeping({ kind: "none" });
      latest.current(answer.voiceId);
    },
    [roundId],
  );

  useLeaving(keeping.kind !== "none");

  return {
    keeping,
    keep: useCallback((spoken: Blob) => void keep(spoken), [keep]),
    retry: () => {
      if (keeping.kind === "refused") void keep(keeping.spoken);
    },
    drop: () => {
      last.current = null;
      setKeeping({ kind: "none" });
    },
  };
}

/** Asks before the page is left with something that is nowhere else. */
function useLeaving(isUnkept: boolean) {
  useEffect(() => {
    if (!isUnkept) return;
    const leaving = (event: BeforeUnloadEvent) => event.preventDefault();
    window.addEventListener("beforeunload", leaving);
    return () => window.removeEventListener("beforeunload", leaving);
  }, [isUnkept]);
}
