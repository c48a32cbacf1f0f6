"use client";

import { useState } from "react";
import { Button } from "@/components/ui/button";
import { Dialog, DialogActions } from "@/components/ui/dialog";
import { Form } from "@/components/ui/form";
import { Notice } from "@/components/ui/notice";
import { SelectField } from "@/components/ui/select-field";
import { TextArea } from "@/components/ui/text-area";
import { showToast } from "@/components/ui/toast";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { RoundAct } from "./round-acts";

/** A round somebody is asked about. */
export interface RoundAsked {
  act: Exclude<RoundAct, "put_back">;
  roundId: string;
  athleteName: string;
  coachPersonId: string | null;
}

/** What a {@link RoundDialogs} takes. */
export interface RoundDialogsProps {
  asked: RoundAsked | null;
  coaches: readonly { personId: string; name: string }[];
  onClose: () => void;
}

/** What is asked before a round is handed over, sent back for a new clip, or withdrawn. */
export function RoundDialogs({ asked, coaches, onClose }: RoundDialogsProps) {
  if (!asked) return null;
  if (asked.act === "hand_over") return <HandOver asked={asked} coaches={coaches} onClose={onClose} />;
  return <WithReason key={asked.roundId} asked={asked} act={asked.act} onClose={onClose} />;
}

function HandOver({ asked, coaches, onClose }: RoundDialogsProps & { asked: RoundAsked }) {
  const [to, setTo] = useState<string | null>(null);
  const handOver = useCommand((api, input: { roundId: string; coachPersonId: string }, once) =>
    api.rounds.handOver.mutate(input, once),
  );
  const others = coaches.filter((coach) => coach.personId !== asked.coachPersonId);
  async function submit() {
    if (!to) return;
    const done = await handOver.run({ roundId: asked.roundId, coachPersonId: to });
    if (!done) return;
    const name = others.find((coach) => coach.personId === to)?.name ?? "the coach";
    showToast({ text: `${asked.athleteName}’s round is with ${name} now.` });
    onClose();
  }
  return (
    <Dialog title={`Hand over the round of ${asked.athleteName}`} isOpen onOpenChange={onClose}>
      <Form onSubmit={submit} aria-label="Hand over">
        <CommandProblem problem={handOver.problem} />
        <SelectField
          label="To which coach?"
          hint="They are told at once. What was written so far goes with it; the due time stays."
          options={others.map((coach) => ({ value: coach.personId, label: coach.name }))}
          value={to}
          onChange={setTo}
          isRequired
          autoFocus
        />
        <DialogActions>
          <Button type="submit" variant="primary" isDisabled={!to} isPending={handOver.pending}>
            Hand over
          </Button>
          <Button onPress={onClose}>Leave it</Button>
        </DialogActions>
      </Form>
    </Dialog>
  );
}

const ASKS = {
  ask_retake: {
    title: (name: string) => `Ask for a new clip of ${name}`,
    label: "Why can this one not be used?",
    hint: "The family reads this. The promise’s clock stands still until the new clip comes, and it is asked for from the arm’s first free day.",
    confirm: "Ask for a new clip",
    said: (name: string) => `${name}’s family has been asked for a new clip.`,
  },
  withdraw: {
    title: (name: string) => `Withdraw the round of ${name}`,
    label: "Why?",
    hint: "The family reads this. The round ends without a review; open corrections stay open. This cannot be taken back.",
    confirm: "Withdraw the round",
    said: (name: string) => `${name}’s round was withdrawn.`,
  },
} as const;

function WithReason(props: { asked: RoundAsked; act: keyof typeof ASKS; onClose: () => void }) {
  const { asked, act, onClose } = props;
  const words = ASKS[act];
  const [reason, setReason] = useState("");
  const ask = useCommand((api, input: { roundId: string; reason: string }, once) =>
    act === "ask_retake" ? api.rounds.askRetake.mutate(input, once) : api.rounds.withdraw.mutate(input, once),
  );
  async function submit() {
    if (!(await ask.run({ roundId: asked.roundId, reason }))) return;
    showToast({ text: words.said(asked.athleteName) });
    onClose();
  }
  const wrong = ask.problem?.fields.reason;
  return (
    <Dialog title={words.title(asked.athleteName)} isOpen onOpenChange={onClose}>
      <Form onSubmit={submit} aria-label={words.confirm}>
        {ask.problem && !wrong ? <Notice kind="refusal">{ask.problem.sentence}</Notice> : null}
        <TextArea
          label={words.label}
          hint={words.hint}
          error={wrong}
          value={reason}
          onChange={setReason}
          maxLength={500}
          rows={3}
          isRequired
          autoFocus
        />
        <DialogActions>
          <Button
            type="submit"
            variant={act === "withdraw" ? "danger" : "primary"}
            isDisabled={reason.trim().length < 3}
            isPending={ask.pending}
          >
            {words.confirm}
          </Button>
          <Button onPress={onClose}>Leave it</Button>
        </DialogActions>
      </Form>
    </Dialog>
  );
}
