"use client";
import { type RefObject, useEffect, useRef, useState } from "react";
import { Button } from "@/components/ui/button";
import { ConfirmDialog } from "@/components/ui/confirm-dialog";
import { Notice } from "@/components/ui/notice";
import { showToast } from "@/components/ui/toast";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import styles from "./room.module.css";
import type { LateMissing } from "./use-unsent-notes";

/** What a {@link RoomSend} takes. */
export interface RoomSendProps {
  roundId: string;
  /** `send` the review, or `settle` the round by its check. */
  act: "send" | "settle";
  /** What is still missing; empty when it is ready. */
  missing: readonly string[];
  /** What else may be missing, looked for when sending is tried. */
  late?: LateMissing;
  /** What the family will read. */
  words: string;
  givenName: string;
  /** Saves what is not saved. @returns the version on the server, or null when it could not be saved */
  flush: () => Promise<number | null>;
  /** Called when the server knows a newer draft than the one that was to be sent; without it, the refusal stays in sight. */
  onOvertaken?: () => void;
}

const WORDS = {
  send: {
    button: "Send to family",
    title: "Send this review?",
    confirm: "Send the review",
    done: "The review is with the family.",
    missing: "Not ready to send",
  },
  settle: {
    button: "Settle the round",
    title: "Settle this round?",
    confirm: "Settle the round",
    done: "The round is settled and the family is told.",
    missing: "Not ready to settle",
  },
} as const;

/** The one way on: says what is missing, or shows what the family will read and asks once. */
export function RoomSend(props: RoomSendProps) {
  const { roundId, act, late, words, givenName, flush, onOvertaken } = props;
  const missing = [...props.missing, ...(late?.missing ?? [])];
  const [isAsking, setAsking] = useState(false);
  const [isSaving, setSaving] = useState(false);
  /** Once sending was tried, what is missing stays in sight until it is there. */
  const [wasTried, setTried] = useState(false);
  const [isUnsaved, setUnsaved] = useState(false);
  const text = WORDS[act];
  const command = useCommand((api, input: { roundId: string; version: number }, once) =>
    act === "send" ? api.reviews.send.mutate(input, once) : api.reviews.settle.mutate(input, once),
  );

  const isOvertaken = command.problem?.refusal?.reason === "changed_meanwhile";
  useEffect(() => {
    if (!isOvertaken || !onOvertaken) return;
    setAsking(false);
    // Both drafts are shown at the head of the page, to choose from.
    window.scrollTo({ top: 0 });
    onOvertaken();
  }, [isOvertaken, onOvertaken]);

  const byKey = useRef(() => {});
  byKey.current = () => {
    if (!isAsking) void ask();
    else if (!isSaving && !command.pending) void go();
  };
  useSendKey(byKey, isAsking);

  async function ask() {
    command.clear();
    setUnsaved(false);
    setTried(true);
    const foundLate = (await late?.look()) ?? [];
    setAsking(props.missing.length === 0 && foundLate.length === 0);
  }

  async function go() {
    setSaving(true);
    const version = await flush();
    setSaving(false);
    if (version === null) {
      setAsking(false);
      return setUnsaved(true);
    }
    if (!(await command.run({ roundId, version }))) return;
    setAsking(false);
    // What comes next stands at the head of the page.
    window.scrollTo({ top: 0 });
    showToast({ text: text.done });
  }

  return (
    <>
      {wasTried && missing.length > 0 ? <Missing title={text.missing} missing={missing} /> : null}
      {isUnsaved ? (
        <Notice kind="refusal" className={styles.footTrouble}>
          It is not saved yet, so it was not sent. Try again once it says that it is saved.
        </Notice>
      ) : null}
      <Button variant="primary" onPress={() => void ask()}>
        {text.button}
      </Button>
      <ConfirmDialog
        title={text.title}
        variant="primary"
        confirmText={text.confirm}
        cancelText="Go on writing"
        isOpen={isAsking}
        isPending={isSaving || command.pending}
        onConfirm={() => void go()}
        onCancel={() => setAsking(false)}
      >
        <p>
          {givenName}'s family will read this. It cannot be changed afterwards; a further word can be added.
        </p>
        <p className={styles.recap}>{words}</p>
        <CommandProblem problem={command.problem} />
      </ConfirmDialog>
    </>
  );
}

/** Ctrl Enter asks, and once more it sends; nothing happens in a dialog of another kind. */
function useSendKey(act: RefObject<() => void>, isAsking: boolean) {
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      if (event.key !== "Enter" || !(event.ctrlKey || event.metaKey) || event.repeat) return;
      const dialog =
        event.target instanceof Element && event.target.closest("[role=dialog], [role=alertdialog]");
      if (dialog && !isAsking) return;
      event.preventDefault();
      event.stopPropagation();
      act.current();
    };
    window.addEventListener("keydown", listen, { capture: true });
    return () => window.removeEventListener("keydown", listen, { capture: true });
  }, [act, isAsking]);
}

function Missing({ title, missing }: { title: string; missing: readonly string[] }) {
  return (
    <Notice kind="attention" title={title} className={styles.footTrouble}>
      <ul className={styles.missing}>
        {missing.map((each) => (
          <li key={each}>{each}</li>
        ))}
      </ul>
    </Notice>
  );
}
