import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import type { BookAnswer } from "@/components/throwing/arm-answer";
import { BooksInForce, booksInWords } from "@/components/throwing/books-in-force";

const GUIDELINE: BookAnswer = {
  ...{ name: "Guideline", source: "A table of 2018", standing: "published", sampleYear: null, ageYears: 12 },
  ...{ notes: ["Two sources differ."], advice: ["No more than 80 innings a year."] },
};
const SAMPLE: BookAnswer = {
  ...{ name: "State sample", source: "A handbook", standing: "sample", sampleYear: 2025, ageYears: 11 },
  ...{ notes: [], advice: [] },
};

describe("the books an arm goes by", () => {
  it("are named beside the number, and that the stricter counts where there are several", () => {
    expect(booksInWords([GUIDELINE])).toBe("By Guideline.");
    expect(booksInWords([GUIDELINE, SAMPLE])).toBe("By Guideline and State sample; the stricter counts.");
    expect(booksInWords([GUIDELINE, SAMPLE, { ...SAMPLE, name: "Cup" }])).toBe(
      "By Guideline, State sample and Cup; the stricter counts.",
    );
  });

  it("each show their source, their year, the advice for the age they count, and where sources differ", () => {
    const markup = renderToStaticMarkup(<BooksInForce books={[GUIDELINE, SAMPLE]} />);
    expect(markup).toContain("A table of 2018");
    expect(markup).toContain("What it also advises at 12");
    expect(markup).toContain("Two sources differ.");
    expect(markup).toContain("figures of 2025");
    expect(markup).not.toContain("What it also advises at 11");
  });

  it("come with the cautions, whichever they are", () => {
    expect(renderToStaticMarkup(<BooksInForce books={[SAMPLE]} />)).toContain("never a permission");
  });
});
