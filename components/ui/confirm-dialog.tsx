"use client";

import type { ReactNode } from "react";
import { Button } from "./button";
import { Dialog, DialogActions } from "./dialog";

/** What a {@link ConfirmDialog} takes. */
export interface ConfirmDialogProps {
  /** The question, e.g. "Withdraw this round?" */
  title: string;
  /** What will be so afterwards. */
  children: ReactNode;
  /** What the act is called, e.g. "Withdraw the round"; never "OK". */
  confirmText: string;
  /** Default "Leave it". */
  cancelText?: string;
  /** `danger` where it cannot be taken back (the default), `primary` where it goes forward. */
  variant?: "danger" | "primary";
  isOpen: boolean;
  isPending?: boolean;
  onConfirm: () => void;
  onCancel: () => void;
}

/** Asks once before what cannot be taken back. The safe answer has the focus. */
export function ConfirmDialog(props: ConfirmDialogProps) {
  return (
    <Dialog
      title={props.title}
      role="alertdialog"
      isOpen={props.isOpen}
      onOpenChange={(isOpen) => {
        if (!isOpen) props.onCancel();
      }}
    >
      <div>{props.children}</div>
      <DialogActions>
        <Button
          variant={props.variant ?? "danger"}
          isPending={props.isPending ?? false}
          onPress={props.onConfirm}
        >
          {props.confirmText}
        </Button>
        <Button autoFocus onPress={props.onCancel}>
          {props.cancelText ?? "Leave it"}
        </Button>
      </DialogActions>
    </Dialog>
  );
}
