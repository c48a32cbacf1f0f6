"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { Dialog, DialogActions } from "@/components/ui/dialog";
import { Form } from "@/components/ui/form";
import { TextArea } from "@/components/ui/text-area";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";

/** What an {@link EndSession} takes. */
export interface EndSessionProps {
  sessionId: string;
  version: number;
  /** The athlete whose place is given up while the session goes on for others; null cancels the session. */
  placeOf: string | null;
}

interface Ending {
  sessionId: string;
  version: number;
  reason: string;
}

/** Cancels a session, or gives up a place on it, with the reason that everybody is told. */
export function EndSession({ sessionId, version, placeOf }: EndSessionProps) {
  const [isOpen, setOpen] = useState(false);
  const end = useCommand((api, input: Ending, once) =>
    placeOf
      ? api.sessions.giveUpPlace.mutate({ ...input, athleteId: placeOf }, once)
      : api.sessions.cancel.mutate(input, once),
  );
  const words = placeOf
    ? { act: "Give up the place", title: "Give up this place?", after: "The session goes on for the others." }
    : { act: "Cancel it", title: "Cancel this session?", after: "Coach, lane and athletes are free again." };

  async function submit(data: FormData) {
    if (await end.run({ sessionId, version, reason: String(data.get("reason")) })) setOpen(false);
  }

  return (
    <>
      <Button variant="danger" onPress={() => setOpen(true)}>
        {words.act}
      </Button>
      <Dialog title={words.title} isOpen={isOpen} onOpenChange={setOpen}>
        <Form onSubmit={(data) => void submit(data)} errors={end.problem?.fields} aria-label={words.title}>
          <p>{words.after} Everybody is told why. It cannot be taken back: book again instead.</p>
          <CommandProblem problem={end.problem} isBesideFields />
          <TextArea label="Reason" name="reason" rows={2} maxLength={500} isRequired />
          <DialogActions>
            <Button type="submit" variant="danger" isPending={end.pending}>
              {words.act}
            </Button>
            <Button autoFocus onPress={() => setOpen(false)}>
              Leave it
            </Button>
          </DialogActions>
        </Form>
      </Dialog>
    </>
  );
}
