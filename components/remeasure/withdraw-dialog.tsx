"use client";
import { ConfirmDialog } from "@/components/ui/confirm-dialog";
import { showToast } from "@/components/ui/toast";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { AgainView } from "@/server/api/measurements/shapes";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";
import { onFrame } from "./remeasure-words";

/** What a {@link WithdrawDialog} takes. */
export interface WithdrawDialogProps {
  request: AgainView["waiting"][number];
  onClose: () => void;
}

/** Asks once before a request for a second measure is taken back. */
export function WithdrawDialog({ request, onClose }: WithdrawDialogProps) {
  const withdraw = useCommand((api, input: { requestId: string }, once) =>
    api.measurements.withdraw.mutate(input, once),
  );
  async function confirm() {
    if (!(await withdraw.run({ requestId: request.requestId }))) return;
    showToast({ text: "The request is withdrawn." });
    onClose();
  }
  return (
    <ConfirmDialog
      title="Withdraw this request?"
      confirmText="Withdraw the request"
      isOpen
      isPending={withdraw.pending}
      onConfirm={() => void confirm()}
      onCancel={onClose}
    >
      <CommandProblem problem={withdraw.problem} />
      {MEASURES[request.kind].words} of {request.athleteName}, {onFrame(request)}, will not be measured again
      for it. What was measured before stays, and it can be asked for anew.
    </ConfirmDialog>
  );
}
