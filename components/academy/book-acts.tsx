"use client";
import { useRouter } from "next/navigation";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { ConfirmDialog } from "@/components/ui/confirm-dialog";
import { LinkButton } from "@/components/ui/link-button";
import { TextField } from "@/components/ui/text-field";
import type { Answers } from "@/components/wire/answers";
import { CommandProblem } from "@/components/wire/command-problem";
import { FormDialog } from "@/components/wire/form-dialog";
import { textOf } from "@/components/wire/form-values";
import { useCommand } from "@/components/wire/use-command";

type State = Answers["ruleBooks"]["book"]["state"];

/** What an admin can do with a book: copy it, confirm a sample, and with one of the academy's own change it or put it aside. */
export function BookActs({ state }: { state: State }) {
  const [open, setOpen] = useState<"copy" | "confirm" | null>(null);
  const isOwn = state.standing === "own";
  const close = () => setOpen(null);
  return (
    <>
      {isOwn ? (
        <>
          <LinkButton href={`/academy/books/${state.id}/edit`}>Change the book</LinkButton>
          <PutAside state={state} />
        </>
      ) : null}
      {state.sampleYear !== null ? (
        <Button onPress={() => setOpen("confirm")}>
          {state.confirmation ? "Confirm again" : "It is current"}
        </Button>
      ) : null}
      <Button variant={isOwn ? "link" : "quiet"} onPress={() => setOpen("copy")}>
        Copy the book
      </Button>
      {open === "copy" ? <CopyDialog state={state} onClose={close} /> : null}
      {open === "confirm" ? <Confirm state={state} onClose={close} /> : null}
    </>
  );
}

function PutAside({ state: { id, version, isArchived } }: { state: State }) {
  const set = useCommand((api, input: { bookId: string; version: number; isArchived: boolean }, once) =>
    api.ruleBooks.setArchived.mutate(input, once),
  );
  return (
    <>
      <Button
        variant="link"
        isPending={set.pending}
        onPress={() => void set.run({ bookId: id, version, isArchived: !isArchived })}
      >
        {isArchived ? "Offer it again" : "Put it aside"}
      </Button>
      <CommandProblem problem={set.problem} />
    </>
  );
}

function CopyDialog({ state, onClose }: { state: State; onClose: () => void }) {
  const router = useRouter();
  const copy = useCommand((api, input: { bookId: string; name: string }, once) =>
    api.ruleBooks.copy.mutate(input, once),
  );
  async function submit(data: FormData) {
    const copied = await copy.run({ bookId: state.id, name: textOf(data, "name") });
    if (copied) router.push(`/academy/books/${copied.bookId}/edit`);
  }
  return (
    <FormDialog
      title={`Copy: ${state.name}`}
      label="Copy the book"
      submitText="Copy the book"
      command={copy}
      onSubmit={submit}
      onClose={onClose}
    >
      <TextField
        label="What the copy is called"
        name="name"
        hint="The copy is this academy's own: change its rules and choose it for athletes and teams."
        defaultValue={`${state.name}, our copy`.slice(0, 120)}
        maxLength={120}
        isRequired
        autoFocus
      />
    </FormDialog>
  );
}

function Confirm({ state, onClose }: { state: State; onClose: () => void }) {
  const confirm = useCommand((api, input: { bookId: string }, once) =>
    api.ruleBooks.confirm.mutate(input, once),
  );
  return (
    <ConfirmDialog
      title={`Is “${state.name}” what holds now?`}
      confirmText="It is current"
      variant="primary"
      isOpen
      isPending={confirm.pending}
      onConfirm={() => void confirm.run({ bookId: state.id }).then((done) => done && onClose())}
      onCancel={onClose}
    >
      <CommandProblem problem={confirm.problem} />
      <p>
        Its figures are of {state.sampleYear}. Look them up with the association first, every row of them.
        Your name and this day are kept beside the book, and it can be chosen from then on.
      </p>
    </ConfirmDialog>
  );
}
