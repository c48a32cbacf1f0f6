"use client";
import type { ReactNode } from "react";
import { Button } from "@/components/ui/button";
import { Dialog, DialogActions } from "@/components/ui/dialog";
import { Form } from "@/components/ui/form";
import type { FieldErrors } from "@/components/ui/form-errors";
import { CommandProblem } from "./command-problem";
import type { Problem } from "./problem";

/** What a {@link FormDialog} takes. */
export interface FormDialogProps {
  title: string;
  /** What the form is called when it is read out. */
  label: string;
  /** What sending it does, e.g. "Add the lane"; never "OK". */
  submitText: string;
  /** Default `primary`. */
  variant?: "primary" | "danger";
  isWide?: boolean;
  /** The command that the form sends: whether it is under way, and why it was not done. */
  command: { pending: boolean; problem: Problem | null };
  /** What was found wrong before anything was sent, by field. */
  errors?: FieldErrors | null;
  onSubmit: (data: FormData) => Promise<void>;
  onClose: () => void;
  children: ReactNode;
}

/** An open dialog around one form that sends one command: its fields, why it was not done, and the way out. */
export function FormDialog(props: FormDialogProps) {
  const { title, label, submitText, variant = "primary", isWide = false, command, onClose } = props;
  return (
    <Dialog title={title} isWide={isWide} isOpen onOpenChange={(isOpen) => isOpen || onClose()}>
      <CommandProblem problem={command.problem} isBesideFields />
      <Form
        onSubmit={(data) => void props.onSubmit(data)}
        errors={props.errors ?? command.problem?.fields ?? {}}
        aria-label={label}
      >
        {props.children}
        <DialogActions>
          <Button type="submit" variant={variant} isPending={command.pending}>
            {submitText}
          </Button>
          <Button onPress={onClose}>Leave it</Button>
        </DialogActions>
      </Form>
    </Dialog>
  );
}
