"use client";
import { createContext, type ReactNode, useContext } from "react";
import { Button } from "@/components/ui/button";
import { Checkbox } from "@/components/ui/checkbox";
import { DateField } from "@/components/ui/date-field";
import { NumberField } from "@/components/ui/number-field";
import { SelectField } from "@/components/ui/select-field";
import { type DraftPath, fieldNameOf } from "./book-draft";

/** How the fields of a book that is being written change it. */
export interface BookEditing {
  set: (path: DraftPath, value: unknown) => void;
  add: (path: DraftPath, item: unknown) => void;
  remove: (path: DraftPath) => void;
}

const Editing = createContext<BookEditing | null>(null);

/** Stands around the fields of one book. */
export const BookEditingProvider = Editing.Provider;

/** How the book in hand is changed. @throws Error outside a {@link BookEditingProvider} (the caller's fault) */
export function useBookEditing(): BookEditing {
  const editing = useContext(Editing);
  if (!editing) throw new Error("The fields of a book stand within its form.");
  return editing;
}

/** What the fields of a book take: where they stand, and what stands there. */
interface BookFieldProps<Value> {
  label: string;
  path: DraftPath;
  value: Value;
  hint?: string;
}

/** A whole number; an emptied field holds none until it is filled again. */
export function FigureField({
  label,
  path,
  value,
  unit,
  hint,
}: BookFieldProps<number | null> & { unit?: string }) {
  const { set } = useBookEditing();
  return (
    <NumberField
      label={label}
      name={fieldNameOf(path)}
      value={value === null || Number.isNaN(value) ? null : value}
      onChange={(next) => set(path, next ?? Number.NaN)}
      {...(unit ? { unit } : {})}
      {...(hint ? { hint } : {})}
    />
  );
}

/** A day; `mayBeEmpty` where none may stand there. */
export function DayFigure({ label, path, value, hint }: BookFieldProps<string | null>) {
  const { set } = useBookEditing();
  return (
    <DateField
      label={label}
      name={fieldNameOf(path)}
      value={value || null}
      onChange={(day) => set(path, day)}
      {...(hint ? { hint } : {})}
    />
  );
}

/** One of a few words. */
export function WordField({
  label,
  path,
  value,
  options,
}: BookFieldProps<string> & { options: readonly { value: string; label: string }[] }) {
  const { set } = useBookEditing();
  return (
    <SelectField
      label={label}
      name={fieldNameOf(path)}
      value={value}
      onChange={(next) => next && set(path, next)}
      options={options}
    />
  );
}

/** A claim that is so or not. */
export function ClaimField({ label, path, value }: BookFieldProps<boolean>) {
  const { set } = useBookEditing();
  return (
    <Checkbox
      label={label}
      name={fieldNameOf(path)}
      isSelected={value}
      onChange={(isSelected) => set(path, isSelected)}
    />
  );
}

/** Takes one item of a list out. */
export function TakeOut({ what, path }: { what: string; path: DraftPath }) {
  const { remove } = useBookEditing();
  return (
    <Button variant="link" isSmall aria-label={`Take out: ${what}`} onPress={() => remove(path)}>
      Take out
    </Button>
  );
}

/** A part of a rule that may not be there; what it begins with is `blank`. */
export function MayBeNone({
  label,
  isThere,
  path,
  blank,
  children,
}: {
  label: string;
  isThere: boolean;
  path: DraftPath;
  blank: unknown;
  children: ReactNode;
}) {
  const { set } = useBookEditing();
  return (
    <>
      <Checkbox label={label} isSelected={isThere} onChange={(is) => set(path, is ? blank : null)} />
      {isThere ? children : null}
    </>
  );
}
