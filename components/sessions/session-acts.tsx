"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { ConfirmDialog } from "@/components/ui/confirm-dialog";
import { LinkButton } from "@/components/ui/link-button";
import type { Answers } from "@/components/wire/answers";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import { EndSession } from "./end-session";

/** What can be done to a session besides running it: move, mark as a no-show, cancel. */
export function SessionActs({ view }: { view: Answers["sessions"]["forStaff"] }) {
  const { head, acts, mayRun } = view;
  const may = (act: (typeof acts)[number]) => acts.includes(act);
  return (
    <>
      {may("move") ? <LinkButton href={`/calendar/find?move=${head.id}`}>Move it</LinkButton> : null}
      {may("mark_no_show") && mayRun ? <NoShow sessionId={head.id} version={head.version} /> : null}
      {may("cancel") ? <EndSession sessionId={head.id} version={head.version} placeOf={null} /> : null}
    </>
  );
}

function NoShow(session: { sessionId: string; version: number }) {
  const [isOpen, setOpen] = useState(false);
  const mark = useCommand((api, input: { sessionId: string; version: number }, once) =>
    api.sessions.markNoShow.mutate(input, once),
  );
  async function confirm() {
    if (await mark.run(session)) setOpen(false);
  }
  return (
    <>
      <Button onPress={() => setOpen(true)}>Nobody came</Button>
      <ConfirmDialog
        title="Did nobody come?"
        confirmText="Mark as a no-show"
        variant="primary"
        isOpen={isOpen}
        isPending={mark.pending}
        onConfirm={() => void confirm()}
        onCancel={() => setOpen(false)}
      >
        <CommandProblem problem={mark.problem} />
        Nothing is charged and nothing thrown. Whoever comes after all can still be checked in.
      </ConfirmDialog>
    </>
  );
}
