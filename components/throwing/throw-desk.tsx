"use client";
import { useRouter } from "next/navigation";
import {
  createContext,
  type ReactNode,
  useCallback,
  useContext,
  useEffect,
  useMemo,
  useState,
  useSyncExternalStore,
} from "react";
import { showToast } from "@/components/ui/toast";
import { deviceStore } from "./device-store";
import { type KeptThrows, type Sending, ThrowKeeper, type ThrowsToLog } from "./kept-throws";
import { KeptThrowsNotice, keptInWords } from "./kept-throws-notice";
import { sendThrows } from "./send-throws";

/** What became of throws that were just entered. `kept`: on this device until the academy can be reached. */
export type Logged = Exclude<Sending, { kind: "later" }> | { kind: "kept" } | { kind: "unreachable" };

interface ThrowDesk {
  log: (givenName: string, throws: ThrowsToLog) => Promise<Logged>;
}

const Desk = createContext<ThrowDesk | null>(null);

let keeper: ThrowKeeper | null = null;

/** The one keeper of this page. Only in a browser. */
export function throwKeeper(): ThrowKeeper {
  keeper ??= new ThrowKeeper(deviceStore);
  return keeper;
}

/** What a {@link ThrowDeskPart} takes. */
export interface ThrowDeskPartProps {
  /** Who is signed in: what others kept on this device is not theirs to see or send. */
  personId: string;
  children: ReactNode;
}

/**
 * Around every page: takes throws in and keeps them on the device until the academy has them. Sends what is kept when a
 * page opens and when the connection is back, and says above the page what is kept and what was refused.
 */
export function ThrowDeskPart({ personId, children }: ThrowDeskPartProps) {
  const router = useRouter();
  const kept = useKept(personId);
  /* What is on its way for the first time is the form's to speak of. */
  const [underway, setUnderway] = useState<string | null>(null);
  const sendKept = useCallback(async () => {
    let arrived = 0;
    await throwKeeper().send(personId, sendThrows, (row) => {
      arrived += 1;
      showToast({ text: `Sent from this device: ${keptInWords(row)}.` });
    });
    if (arrived > 0) router.refresh();
  }, [personId, router]);

  useEffect(() => {
    const again = () => void sendKept();
    again();
    window.addEventListener("online", again);
    return () => window.removeEventListener("online", again);
  }, [sendKept]);

  const desk = useMemo<ThrowDesk>(
    () => ({
      async log(givenName, throws) {
        const row = { id: crypto.randomUUID(), personId, givenName, throws, problem: null };
        setUnderway(row.id);
        const outcome = await logNow(row);
        setUnderway(null);
        return outcome;
      },
    }),
    [personId],
  );
  return (
    <Desk value={desk}>
      <KeptThrowsNotice
        kept={kept.filter((row) => row.id !== underway)}
        onSend={() => void sendKept()}
        onRetry={(id) => {
          throwKeeper().retry(id);
          void sendKept();
        }}
        onDrop={(id) => throwKeeper().drop(id)}
      />
      {children}
    </Desk>
  );
}

/** Takes throws in: on the device first, then to the academy. @throws Error outside a {@link ThrowDeskPart} */
export function useThrowDesk(): ThrowDesk {
  const desk = useContext(Desk);
  if (!desk) throw new Error("There is no desk for throws around this page.");
  return desk;
}

const NOTHING: readonly KeptThrows[] = [];

function useKept(personId: string): readonly KeptThrows[] {
  const all = useSyncExternalStore(
    listen,
    () => throwKeeper().all(),
    () => NOTHING,
  );
  return useMemo(() => all.filter((row) => row.personId === personId), [all, personId]);
}

function listen(listener: () => void): () => void {
  const end = throwKeeper().listen(listener);
  const elsewhere = () => throwKeeper().changedElsewhere();
  window.addEventListener("storage", elsewhere);
  return () => {
    end();
    window.removeEventListener("storage", elsewhere);
  };
}

/* On the device first: then nothing is lost when the page closes before there is an answer. */
async function logNow(row: KeptThrows): Promise<Logged> {
  const isKept = throwKeeper().keep(row);
  const outcome = await sendThrows(row);
  if (outcome.kind === "later") return { kind: isKept ? "kept" : "unreachable" };
  /* Whoever entered it is here and mends it in the form. */
  throwKeeper().drop(row.id);
  return outcome;
}
