"use client";
import { Button } from "@/components/ui/button";
import { Notice } from "@/components/ui/notice";
import { throwsInWords } from "@/server/domain/throwing/throw-words";
import { dayInWords } from "@/server/domain/time/words";
import type { KeptThrows } from "./kept-throws";
import styles from "./throwing-page.module.css";

/** What a {@link KeptThrowsNotice} takes. */
export interface KeptThrowsNoticeProps {
  kept: readonly KeptThrows[];
  onSend: () => void;
  onRetry: (id: string) => void;
  onDrop: (id: string) => void;
}

/** What is kept on this device and not on the log yet, and what the academy refused; nothing when there is neither. */
export function KeptThrowsNotice({ kept, onSend, onRetry, onDrop }: KeptThrowsNoticeProps) {
  const waiting = kept.filter((row) => row.problem === null);
  const refused = kept.filter((row) => row.problem !== null);
  return (
    <>
      {waiting.length > 0 ? (
        <Notice
          kind="attention"
          word="Kept on this phone"
          title={`${waiting.length === 1 ? "1 entry is" : `${waiting.length} entries are`} not on the log yet.`}
          actions={
            <Button isSmall onPress={onSend}>
              Send now
            </Button>
          }
        >
          Sent by itself when there is signal.
          <ul className={styles.rows}>
            {waiting.map((row) => (
              <li key={row.id}>{keptInWords(row)}</li>
            ))}
          </ul>
        </Notice>
      ) : null}
      {refused.map((row) => (
        <Notice
          key={row.id}
          kind="refusal"
          word="Not logged"
          title={keptInWords(row)}
          actions={
            <>
              <Button isSmall onPress={() => onRetry(row.id)}>
                Send again
              </Button>
              <Button isSmall variant="danger" onPress={() => onDrop(row.id)}>
                Give it up
              </Button>
            </>
          }
        >
          {row.problem}
        </Notice>
      ))}
    </>
  );
}

/** What was kept, in words: whose, how many, when. */
export function keptInWords({ givenName, throws }: Pick<KeptThrows, "givenName" | "throws">): string {
  return `${givenName}, ${throwsInWords(throws.kind, throws.pitches)}, ${dayInWords(throws.thrownOn)}`;
}
