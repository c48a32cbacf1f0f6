import { describe, expect, it } from "vitest";
import { blankRule } from "@/components/academy/blank-rule";
import {
  fieldNameOf,
  itemsWithPaths,
  withItemAt,
  withoutItemAt,
  withValueAt,
} from "@/components/academy/book-draft";
import { bookProblems } from "@/server/domain/rule-books/book-problems";
import { RULE_KINDS } from "@/server/domain/throwing/rule";
import { OWN_BOOK } from "../../helpers/own-book";

const DRAFT = { book: { name: "Ours", rules: [{ days: 2 }, { days: 3 }] } };

describe("a book that is being written", () => {
  it("changes at one place and nowhere else", () => {
    const changed = withValueAt(DRAFT, ["book", "rules", 1, "days"], 4);
    expect(changed).toEqual({ book: { name: "Ours", rules: [{ days: 2 }, { days: 4 }] } });
    expect(changed.book.rules[0]).toBe(DRAFT.book.rules[0]);
    expect(DRAFT.book.rules[1]).toEqual({ days: 3 });
  });

  it("takes an item more, and lets one go", () => {
    const more = withItemAt(DRAFT, ["book", "rules"], { days: 9 });
    expect(more.book.rules).toEqual([{ days: 2 }, { days: 3 }, { days: 9 }]);
    expect(withoutItemAt(more, ["book", "rules", 0]).book.rules).toEqual([{ days: 3 }, { days: 9 }]);
  });

  it("names its fields as a refusal does", () => {
    const [first] = itemsWithPaths(OWN_BOOK.rules, ["book", "rules"]);
    expect(fieldNameOf([...(first?.path ?? []), "source"])).toBe("book.rules.0.source");
  });

  it.each(RULE_KINDS)("asks for the figures of a new rule: %s", (kind) => {
    const rules = [...OWN_BOOK.rules, blankRule(kind, "2026-11-25")];
    const problems = Object.keys(bookProblems({ ...OWN_BOOK, rules }));
    expect(problems).toContain(`rules.${rules.length - 1}.source`);
    expect(problems.every((path) => path.startsWith(`rules.${rules.length - 1}.`))).toBe(true);
  });
});
