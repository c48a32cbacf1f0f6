"use client";

import type { FormEvent, ReactNode } from "react";
import { Form as AriaForm } from "react-aria-components/Form";
import styles from "./form.module.css";
import { type FieldErrors, FormErrors } from "./form-errors";
import { joinClasses } from "./join-classes";

/** What a {@link Form} takes. */
export interface FormProps {
  children: ReactNode;
  /** Messages by field name: summed up at the top and shown at each field of that name. */
  errors?: FieldErrors;
  /** Called with what the named fields hold; the page is not left. */
  onSubmit?: (data: FormData) => void;
  /** For a form that a server action or another address takes. */
  action?: string | ((data: FormData) => void | Promise<void>);
  method?: "get" | "post";
  className?: string;
  "aria-label"?: string;
}

const NONE: FieldErrors = {};

/** Fields under one another, what is wrong with them, and how to send them. */
export function Form({ children, errors = NONE, onSubmit, className, ...rest }: FormProps) {
  function submit(event: FormEvent<HTMLFormElement>) {
    if (!onSubmit) return;
    event.preventDefault();
    onSubmit(new FormData(event.currentTarget));
  }
  return (
    <AriaForm
      {...rest}
      className={joinClasses(styles.form, className)}
      validationBehavior="aria"
      validationErrors={{ ...errors }}
      onSubmit={submit}
    >
      <FormErrors errors={errors} />
      {children}
    </AriaForm>
  );
}

/** Short fields beside one another where there is room. */
export function FormRow({ children }: { children: ReactNode }) {
  return <div className={styles.row}>{children}</div>;
}

/** The actions that end a form, the primary one first. */
export function FormActions({ children }: { children: ReactNode }) {
  return <div className={styles.actions}>{children}</div>;
}
