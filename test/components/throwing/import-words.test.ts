import { describe, expect, it } from "vitest";
import {
  addWords,
  importedInWords,
  importTemplateHref,
  rowsInWords,
} from "@/components/throwing/import-words";
import { IMPORT_TEMPLATE, readThrowsFile } from "@/server/imports/throws-file";

const preview = (fresh: number, there: number, bad: number) => ({
  fresh: Array(fresh),
  there: Array(there),
  bad: Array(bad),
});

describe("what a file would do, in words", () => {
  it.each([
    [preview(2, 0, 1), "2 rows are new, 1 cannot be read.", "Add the 2 new rows, leave out 1 row"],
    [preview(1, 3, 0), "1 row is new, 3 on the log already.", "Add the new row"],
    [preview(0, 2, 2), "0 rows are new, 2 on the log already, 2 cannot be read.", null],
  ])("%j", (file, sentence, button) => {
    expect(rowsInWords(file)).toBe(sentence);
    if (button) expect(addWords(file)).toBe(button);
  });

  it.each([
    [{ added: 1, there: 0, leftOut: 0 }, "Added: 1 row."],
    [{ added: 38, there: 1, leftOut: 2 }, "Added: 38 rows, 2 left out."],
  ])("%j was done", (counts, sentence) => {
    expect(importedInWords(counts)).toBe(sentence);
  });
});

describe("the template", () => {
  it("is a file whose columns are all known", () => {
    const text = decodeURIComponent(importTemplateHref().split(",").slice(1).join(","));
    expect(text).toBe(IMPORT_TEMPLATE);
    expect(readThrowsFile(`${text}2026-04-18,Game,45,2,0,40,0,,,\r\n`)).toMatchObject({
      ok: true,
      unknownColumns: [],
    });
  });
});
