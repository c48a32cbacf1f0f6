"use client";
import { useRouter } from "next/navigation";
import { useMemo, useState } from "react";
import { Button } from "@/components/ui/button";
import { Form, FormActions, FormPart } from "@/components/ui/form";
import { LinkButton } from "@/components/ui/link-button";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import { TextArea } from "@/components/ui/text-area";
import { TextField } from "@/components/ui/text-field";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import { bookProblems } from "@/server/domain/rule-books/book-problems";
import type { RuleBook } from "@/server/domain/throwing/rule-book";
import { AcademyPage } from "./academy-page";
import { AcademyPlace } from "./academy-place";
import { AgeBasisFields } from "./book-age-basis";
import { itemsWithPaths, withItemAt, withoutItemAt, withValueAt } from "./book-draft";
import { type BookEditing, BookEditingProvider } from "./book-fields";
import { BookPreview } from "./book-preview";
import { AddRule, RuleSection } from "./book-rule-section";

/** What a {@link BookForm} takes. */
export interface BookFormProps {
  bookId: string;
  /** The version that is changed. */
  version: number;
  book: RuleBook;
  today: string;
}

/** A book of the academy's own, to be changed: every rule with its figures, and what it would have said. */
export function BookForm({ bookId, version, book, today }: BookFormProps) {
  const router = useRouter();
  const [draft, setDraft] = useState({ book });
  const [errors, setErrors] = useState<Record<string, string>>({});
  const editing = useMemo<BookEditing>(
    () => ({
      set: (path, value) => setDraft((before) => withValueAt(before, path, value)),
      add: (path, item) => setDraft((before) => withItemAt(before, path, item)),
      remove: (path) => setDraft((before) => withoutItemAt(before, path)),
    }),
    [],
  );
  const save = useCommand((api, input: { bookId: string; version: number; book: RuleBook }, once) =>
    api.ruleBooks.save.mutate(input, once),
  );
  const preview = useCommand(
    (api, input: { book: RuleBook }, once) => api.ruleBooks.preview.query(input, once),
    { refresh: false },
  );
  const [previewed, setPreviewed] = useState<Awaited<ReturnType<typeof preview.run>>>();

  function isSound(): boolean {
    const found = Object.entries(bookProblems(draft.book)).map(([path, words]) => [`book.${path}`, words]);
    setErrors(Object.fromEntries(found));
    return found.length === 0;
  }
  async function submit() {
    if (isSound() && (await save.run({ bookId, version, book: draft.book }))) {
      router.push(`/academy/books/${bookId}`);
    }
  }
  async function look() {
    if (isSound()) setPreviewed(await preview.run({ book: draft.book }));
  }
  return (
    <AcademyPage>
      <PageHeading
        question={`What does “${book.name}” say?`}
        place={<AcademyPlace href={`/academy/books/${bookId}`} label={book.name} />}
        detail="Saving makes a new version that holds at once for everybody who goes by this book. Earlier versions are kept."
      />
      <CommandProblem problem={save.problem} isBesideFields />
      <BookEditingProvider value={editing}>
        <Form
          onSubmit={() => void submit()}
          errors={{ ...save.problem?.fields, ...errors }}
          aria-label="Rule book"
        >
          <BookHead book={draft.book} set={editing.set} />
          {itemsWithPaths(draft.book.rules, ["book", "rules"]).map(({ item, path }) => (
            <RuleSection
              key={path.join(".")}
              rule={item}
              path={path}
              isOnly={draft.book.rules.length === 1}
            />
          ))}
          <AddRule today={today} />
          <BookPreview preview={previewed} />
          <CommandProblem problem={preview.problem} />
          <FormActions>
            <Button type="submit" variant="primary" isPending={save.pending}>
              Save as a new version
            </Button>
            <Button isPending={preview.pending} pendingText="Looking…" onPress={() => void look()}>
              What would it have said?
            </Button>
            <LinkButton variant="link" href={`/academy/books/${bookId}`}>
              Leave it
            </LinkButton>
          </FormActions>
        </Form>
      </BookEditingProvider>
    </AcademyPage>
  );
}

function BookHead({ book, set }: { book: RuleBook; set: BookEditing["set"] }) {
  return (
    <Section title="The book">
      <FormPart>
        <TextField
          label="Name"
          name="book.name"
          value={book.name}
          onChange={(name) => set(["book", "name"], name)}
          maxLength={120}
        />
        <TextField
          label="Source"
          name="book.source"
          hint="Where the figures are from, and of which year."
          value={book.source}
          onChange={(source) => set(["book", "source"], source)}
          maxLength={500}
        />
        <AgeBasisFields basis={book.ageBasis} />
        <TextArea
          label="Notes"
          name="book.notes"
          hint="One a line: where sources contradict each other, and what was chosen."
          value={book.notes.join("\n")}
          onChange={(text) => set(["book", "notes"], text === "" ? [] : text.split("\n"))}
          rows={3}
          isOptional
        />
      </FormPart>
    </Section>
  );
}
