"use client";
import { useCallback, useEffect, useRef, useState } from "react";
import { forgetUnsent, rememberUnsent, unsentAt, type VoicePlace } from "./unsent-voice";
import { keepVoice } from "./voice-address";

/** What was said and is not with the academy yet: on its way, or turned away with the reason. */
export type Keeping =
  | { kind: "none" }
  | { kind: "sending"; spoken: Blob }
  | { kind: "refused"; spoken: Blob; sentence: string };

/**
 * Sends what was said at once, and holds on to it on this device until the academy has it: through a reload, and sent
 * again by itself when the page opens or the line is back. Where the browser keeps nothing, the page asks before it is left.
 */
export function useKeptVoice({ roundId, lineId }: VoicePlace, onKept: (voiceId: string) => void) {
  const [keeping, setKeeping] = useState<Keeping>({ kind: "none" });
  const [isOnDevice, setOnDevice] = useState(false);
  const latest = useRef(onKept);
  latest.current = onKept;
  const last = useRef<Blob | null>(null);

  const send = useCallback(
    async (spoken: Blob, isKeptHere: boolean) => {
      last.current = spoken;
      setOnDevice(isKeptHere);
      setKeeping({ kind: "sending", spoken });
      const answer = await keepVoice(roundId, spoken, isKeptHere);
      if (last.current !== spoken) return;
      if ("sentence" in answer) return setKeeping({ kind: "refused", spoken, sentence: answer.sentence });
      setKeeping({ kind: "none" });
      latest.current(answer.voiceId);
      await forgetUnsent({ roundId, lineId });
    },
    [roundId, lineId],
  );
  const keep = useCallback(
    async (spoken: Blob) => send(spoken, await rememberUnsent({ roundId, lineId }, spoken, Date.now())),
    [send, roundId, lineId],
  );
  const retry = () => {
    if (keeping.kind === "refused") void send(keeping.spoken, isOnDevice);
  };

  useEffect(() => {
    let isHere = true;
    void unsentAt({ roundId, lineId }, Date.now()).then((spoken) => {
      if (spoken && isHere && last.current === null) void send(spoken, true);
    });
    return () => {
      isHere = false;
    };
  }, [send, roundId, lineId]);
  useBackOnLine(retry);
  useLeaving(keeping.kind !== "none" && !isOnDevice);

  return {
    keeping,
    keep: useCallback((spoken: Blob) => void keep(spoken), [keep]),
    retry,
    drop: () => {
      last.current = null;
      setKeeping({ kind: "none" });
      void forgetUnsent({ roundId, lineId });
    },
  };
}

function useBackOnLine(retry: () => void) {
  const latest = useRef(retry);
  latest.current = retry;
  useEffect(() => {
    const online = () => latest.current();
    window.addEventListener("online", online);
    return () => window.removeEventListener("online", online);
  }, []);
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
