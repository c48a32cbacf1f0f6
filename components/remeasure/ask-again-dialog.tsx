"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { Dialog, DialogActions } from "@/components/ui/dialog";
import { Form } from "@/components/ui/form";
import { SelectField } from "@/components/ui/select-field";
import { showToast } from "@/components/ui/toast";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { AgainView } from "@/server/api/measurements/shapes";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";
import { onFrame } from "./remeasure-words";

/** What an {@link AskAgainDialog} takes. */
export interface AskAgainDialogProps {
  measure: AgainView["latest"][number];
  coaches: AgainView["coaches"];
  onClose: () => void;
}

const ANYBODY = "anybody";

/** Asks who is to measure a frame a second time. */
export function AskAgainDialog({ measure, coaches, onClose }: AskAgainDialogProps) {
  const [of, setOf] = useState<string | null>(ANYBODY);
  const ask = useCommand((api, input: { measurementId: string; forPersonId: string | null }, once) =>
    api.measurements.askAgain.mutate(input, once),
  );
  const options = [
    { value: ANYBODY, label: "Whoever comes first" },
    ...coaches.map(({ personId, name }) => ({ value: personId, label: name })),
  ];
  async function submit() {
    const forPersonId = of === ANYBODY ? null : of;
    if (!(await ask.run({ measurementId: measure.id, forPersonId }))) return;
    showToast({ text: "The frame waits to be measured again." });
    onClose();
  }
  return (
    <Dialog title="Ask for a second measure" isOpen onOpenChange={onClose}>
      <Form onSubmit={submit} aria-label="Ask for a second measure">
        <CommandProblem problem={ask.problem} />
        <p>
          {MEASURES[measure.kind].words} of {measure.athleteName}, {onFrame(measure)}. Whoever measures sees
          neither its points nor its value.
        </p>
        <SelectField
          label="Who measures it?"
          options={options}
          value={of}
          onChange={setOf}
          isRequired
          autoFocus
        />
        <DialogActions>
          <Button type="submit" variant="primary" isDisabled={of === null} isPending={ask.pending}>
            Ask for it
          </Button>
          <Button onPress={onClose}>Leave it</Button>
        </DialogActions>
      </Form>
    </Dialog>
  );
}
