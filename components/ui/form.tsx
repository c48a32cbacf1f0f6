"use client";

import { type FormEvent, type ReactNode, useReducer } from "react";
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
  /* A field drops its message when it is left, and the button below would move from under the pointer that presses
   * it. So the messages are given anew then, and stand until the form is sent again. */
  const [, giveAnew] = useReducer((times: number) => times + 1, 0);
  function submit(event: FormEvent<HTMLFormElement>) {
    if (!onSubmit) return;
    event.preventDefault();
    onSubmit(new FormData(event.currentTarget));
  }
  return (
    <AriaForm {...rest} validationBehavior="aria" validationErrors={{ ...errors }} onSubmit={submit}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: it only listens; the fields within are what is used */}
      <div className={joinClasses(styles.form, className)} onBlur={giveAnew}>
        <FormErrors errors={errors} />
        {children}
      </div>
    </AriaForm>
  );
}

/** Fields of one section of a longer form, under one another as in the form itself. */
export function FormPart({ children }: { children: ReactNode }) {
  return <div className={styles.part}>{children}</div>;
}

/** Short fields beside one another where there is room. */
export function FormRow({ children }: { children: ReactNode }) {
  return <div className={styles.row}>{children}</div>;
}

/** The actions that end a form, the primary one first. */
export function FormActions({ children }: { children: ReactNode }) {
  return <div className={styles.actions}>{children}</div>;
}
