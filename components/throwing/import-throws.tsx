"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { buttonClasses } from "@/components/ui/button-look";
import { Disclosure } from "@/components/ui/disclosure";
import { Form, FormActions } from "@/components/ui/form";
import { Notice } from "@/components/ui/notice";
import { RadioChoice } from "@/components/ui/radio-choice";
import { showToast } from "@/components/ui/toast";
import type { Answers } from "@/components/wire/answers";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { DayOrder } from "@/server/domain/throwing/import-row";
import { throwsInWords } from "@/server/domain/throwing/throw-words";
import { dayInWords } from "@/server/domain/time/words";
import { addWords, importedInWords, importTemplateHref, rowsInWords } from "./import-words";
import styles from "./throwing-page.module.css";

type Preview = Answers["throwImport"]["preview"];

interface PickedFile {
  athleteId: string;
  csv: string;
  dayOrder: DayOrder;
}

const DAY_ORDERS = [
  { value: "month_first", label: "4/18/2026" },
  { value: "day_first", label: "18/4/2026" },
];

/** Past throwing from a file: a template, what the file would do line by line, and only then adding it. */
export function ImportThrows({ athleteId }: { athleteId: string }) {
  const [file, setFile] = useState<PickedFile>({ athleteId, csv: "", dayOrder: "month_first" });
  const [preview, setPreview] = useState<Preview | null>(null);
  const check = useCommand((api, input: PickedFile, once) => api.throwImport.preview.query(input, once), {
    refresh: false,
  });
  const add = useCommand((api, input: PickedFile & { withoutBad: boolean }, once) =>
    api.throwImport.add.mutate(input, once),
  );

  async function look(picked: PickedFile) {
    setFile(picked);
    setPreview(null);
    add.clear();
    if (picked.csv === "") return check.clear();
    setPreview((await check.run(picked)) ?? null);
  }

  async function submit() {
    if (!preview) return;
    const counts = await add.run({ ...file, withoutBad: preview.bad.length > 0 });
    if (!counts) return;
    showToast({ text: importedInWords(counts) });
    setPreview(null);
    setFile({ ...file, csv: "" });
  }

  return (
    <Disclosure summary="Add past throwing from a file">
      <Form onSubmit={() => void submit()} aria-label="Add past throwing from a file">
        <p>
          One line for each game, bullpen or other throwing: the day, the kind and the pitches; of a game also
          innings, the last batter, walks and the team. Nothing is added before you have seen what the file
          holds.
        </p>
        <div>
          <a href={importTemplateHref()} download="past-throwing.csv" className={buttonClasses({})}>
            Download the template
          </a>
        </div>
        <RadioChoice
          label="Days with slashes are written as"
          hint="2026-04-18 is always understood."
          options={DAY_ORDERS}
          value={file.dayOrder}
          onChange={(dayOrder) => void look({ ...file, dayOrder: dayOrder as DayOrder })}
        />
        <label className={styles.file}>
          The file, as CSV
          <input
            type="file"
            accept=".csv,text/csv,text/plain"
            onChange={(event) => {
              const [picked] = event.target.files ?? [];
              void textOfFile(picked).then((csv) => look({ ...file, csv }));
            }}
          />
        </label>
        <CommandProblem problem={check.problem ?? add.problem} />
        {preview ? <PreviewPart preview={preview} /> : null}
        {preview && preview.fresh.length > 0 ? (
          <FormActions>
            <Button type="submit" variant="primary" isPending={add.pending} pendingText="Adding…">
              {addWords(preview)}
            </Button>
          </FormActions>
        ) : null}
      </Form>
    </Disclosure>
  );
}

async function textOfFile(file: File | undefined): Promise<string> {
  return file ? file.text() : "";
}

/** What a file would do: how much is new and there already, and each wrong line with what is wrong. */
function PreviewPart({ preview }: { preview: Preview }) {
  const { fresh, there, bad, unknownColumns } = preview;
  return (
    <>
      <Notice kind={fresh.length > 0 ? "info" : "attention"} title={rowsInWords(preview)}>
        {unknownColumns.length > 0 ? `Columns left aside: ${unknownColumns.join(", ")}.` : null}
      </Notice>
      {bad.length > 0 ? (
        <Notice kind="refusal" word="Wrong" title={bad.length === 1 ? "1 line" : `${bad.length} lines`}>
          <ul className={styles.rows}>
            {bad.map(({ line, problems }) => (
              <li key={line}>
                Line {line}: {problems.join(" ")}
              </li>
            ))}
          </ul>
        </Notice>
      ) : null}
      <RowList title="New" rows={fresh} />
      <RowList title="On the log already" rows={there} />
    </>
  );
}

function RowList({ title, rows }: { title: string; rows: Preview["fresh"] }) {
  if (rows.length === 0) return null;
  return (
    <Disclosure summary={`${title}: ${rows.length}`}>
      <ul className={styles.rows}>
        {rows.map(({ line, thrownOn, kind, pitches }) => (
          <li key={line}>
            Line {line}: {dayInWords(thrownOn, { withYear: true })}, {throwsInWords(kind, pitches)}
          </li>
        ))}
      </ul>
    </Disclosure>
  );
}
