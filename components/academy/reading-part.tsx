"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { Checkbox } from "@/components/ui/checkbox";
import { Form, FormActions } from "@/components/ui/form";
import { Section } from "@/components/ui/section";
import { showToast } from "@/components/ui/toast";
import type { Answers } from "@/components/wire/answers";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import { readingInWords } from "@/server/domain/throwing/reading-in-words";
import { MOUND_WORK_KINDS } from "@/server/domain/throwing/throw-entry";
import { THROW_KIND_WORDS } from "@/server/domain/throwing/throw-words";
import styles from "./books.module.css";

type Reading = Answers["ruleBooks"]["list"]["reading"];
type Kinds = Reading["countedKinds"];

/** Which mound work counts as pitches beside games: the reading that is on, and for an admin the way to change it. */
export function ReadingPart({ reading, isAdmin }: { reading: Reading; isAdmin: boolean }) {
  return (
    <Section title="How we read them">
      <p>{readingInWords(reading)}</p>
      {isAdmin ? <ReadingForm reading={reading} /> : null}
    </Section>
  );
}

function ReadingForm({ reading }: { reading: Reading }) {
  const [kinds, setKinds] = useState<Kinds>(reading.countedKinds);
  const save = useCommand((api, input: { countedKinds: [...Kinds]; version: number }, once) =>
    api.ruleBooks.setReading.mutate(input, once),
  );
  const isChanged = MOUND_WORK_KINDS.some(
    (kind) => kinds.includes(kind) !== reading.countedKinds.includes(kind),
  );
  const isLooser = reading.countedKinds.some((kind) => !kinds.includes(kind));
  async function submit() {
    const saved = await save.run({ countedKinds: [...kinds], version: reading.version });
    if (saved) showToast({ text: "The reading holds from now on" });
  }
  return (
    <Form onSubmit={() => void submit()} aria-label="What counts as pitches">
      <CommandProblem problem={save.problem} />
      <fieldset className={styles.kinds}>
        <legend>These count as pitches toward the day and its rest, like games</legend>
        {MOUND_WORK_KINDS.map((kind) => (
          <Checkbox
            key={kind}
            label={THROW_KIND_WORDS[kind]}
            isSelected={kinds.includes(kind)}
            onChange={(counts) =>
              setKinds((before) => (counts ? [...before, kind] : before.filter((each) => each !== kind)))
            }
          />
        ))}
      </fieldset>
      {isLooser ? (
        <p className={styles.quiet}>
          Counting less leaves arms more by the same book. The cautious reading counts both.
        </p>
      ) : null}
      {isChanged ? (
        <FormActions>
          <Button type="submit" variant="primary" isPending={save.pending}>
            Read the books this way
          </Button>
          <span className={styles.quiet}>It holds at once, for every answer.</span>
        </FormActions>
      ) : null}
    </Form>
  );
}
