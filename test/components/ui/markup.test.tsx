import type { ReactElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { Button } from "@/components/ui/button";
import { Checkbox } from "@/components/ui/checkbox";
import { DefinitionList } from "@/components/ui/definition-list";
import { EmptyState } from "@/components/ui/empty-state";
import { Form } from "@/components/ui/form";
import { LinkButton } from "@/components/ui/link-button";
import { Notice } from "@/components/ui/notice";
import { NumberField } from "@/components/ui/number-field";
import { PageHeading } from "@/components/ui/page-heading";
import { Pagination, rangeInWords } from "@/components/ui/pagination";
import { ProgressBar } from "@/components/ui/progress-bar";
import { RadioChoice } from "@/components/ui/radio-choice";
import { Section } from "@/components/ui/section";
import { Spinner } from "@/components/ui/spinner";
import { Legend, MARK_KINDS, MARK_WORDS, StateMark } from "@/components/ui/state-mark";
import { TextField } from "@/components/ui/text-field";
import { TimeText } from "@/components/ui/time-text";

const html = (element: ReactElement) => renderToStaticMarkup(element);
const idAfter = (markup: string, attribute: string) =>
  markup.match(new RegExp(`${attribute}="([^"]+)"`))?.[1] ?? "";
const textOf = (markup: string) =>
  markup
    .replaceAll(/<[^>]+>/g, " ")
    .replaceAll(/\s+/g, " ")
    .trim();

describe("an action", () => {
  it("is a button that sends nothing unless told to", () => {
    expect(html(<Button>Take the next</Button>)).toContain('type="button"');
    expect(html(<Button type="submit">Send</Button>)).toContain('type="submit"');
  });

  it("says what is under way, and cannot be pressed twice, while pending", () => {
    const markup = html(
      <Button type="submit" isPending pendingText="Sending…">
        Send
      </Button>,
    );
    expect(textOf(markup)).toBe("Sending…");
    expect(markup).toContain('aria-disabled="true"');
    expect(markup).not.toContain('type="submit"');
  });

  it("is a true link when it leads to a page", () => {
    expect(html(<LinkButton href="/athletes">Athletes</LinkButton>)).toMatch(/^<a [^>]*href="\/athletes"/);
  });
});

describe("a field", () => {
  it("is named by its label and explained by its hint", () => {
    const markup = html(<TextField label="Name" hint="As on the roster" name="name" />);
    const inputId = markup.match(/<input[^>]* id="([^"]+)"/)?.[1];
    expect(markup).toContain(`for="${inputId}"`);
    expect(markup).toContain("As on the roster");
    expect(idAfter(markup, "aria-describedby")).not.toBe("");
  });

  it("says what is wrong, and is marked invalid, only when something is", () => {
    const wrong = html(<TextField label="Email" name="email" error="Write it as name@place.org." />);
    expect(wrong).toContain('aria-invalid="true"');
    expect(textOf(wrong)).toContain("Write it as name@place.org.");
    expect(html(<TextField label="Email" name="email" />)).not.toContain("aria-invalid");
  });

  it("shows a form's message at the field of that name and again in the summary", () => {
    const markup = html(
      <Form errors={{ email: "Write it as name@place.org." }} onSubmit={() => undefined}>
        <TextField label="Email" name="email" />
        <TextField label="Name" name="name" />
      </Form>,
    );
    expect(markup.match(/Write it as name@place\.org\./g)).toHaveLength(2);
    expect(markup.match(/aria-invalid="true"/g)).toHaveLength(1);
    expect(markup).toContain('role="alert"');
    expect(textOf(markup)).toContain("1 thing to put right");
  });

  it("can be found by its name from the summary", () => {
    expect(html(<NumberField label="Pitches" name="pitches" />)).toContain('data-field="pitches"');
    expect(html(<Checkbox label="Pain" name="pain" />)).toContain('data-field="pain"');
  });

  it("shows an empty number as empty, never as zero", () => {
    expect(html(<NumberField label="Pitches" defaultValue={null} />)).not.toContain('value="0"');
    expect(html(<NumberField label="Pitches" defaultValue={0} />)).toContain('value="0"');
  });

  it("offers each choice of a row as a radio button, the chosen one checked", () => {
    const options = [
      { value: "front", label: "Front" },
      { value: "back", label: "Back" },
    ];
    const markup = html(<RadioChoice label="View" options={options} defaultValue="back" />);
    expect(markup).toContain('role="radiogroup"');
    expect(markup.match(/type="radio"/g)).toHaveLength(2);
    expect(markup.match(/<input[^>]*checked=""[^>]*value="back"/g)).toHaveLength(1);
  });
});

describe("a heading", () => {
  it("asks the page's question in its only h1", () => {
    const markup = html(
      <PageHeading question="What next?" place="Thu 26 Nov" actions={<Button>Go</Button>} />,
    );
    expect(markup.match(/<h1>/g)).toHaveLength(1);
    expect(markup).toContain("<h1>What next?</h1>");
  });

  it("names its section", () => {
    const markup = html(
      <Section title="Owed" count={3}>
        rows
      </Section>,
    );
    const id = idAfter(markup, "aria-labelledby");
    expect(markup).toContain(`id="${id}">Owed`);
  });
});

describe("a notice", () => {
  it.each([
    ["refusal", "alert", "Not done"],
    ["attention", "status", "Attention"],
    ["info", "status", "Note"],
    ["held", "status", "Done"],
  ] as const)("of kind %s has the role %s and says %s", (kind, role, word) => {
    const markup = html(<Notice kind={kind}>text</Notice>);
    expect(markup).toContain(`role="${role}"`);
    expect(textOf(markup)).toBe(`${word} text`);
    expect(markup).toContain("<path");
  });

  it("is not announced when it belongs to the page from the start", () => {
    expect(html(<Notice kind="refusal" isStatic />)).toContain('role="note"');
  });
});

describe("a state", () => {
  it.each(MARK_KINDS)("%s is drawn and said", (kind) => {
    const shown = html(<StateMark kind={kind} label="in words" />);
    const hidden = html(<StateMark kind={kind} label="in words" isLabelShown={false} />);
    for (const markup of [shown, hidden]) {
      expect(markup).toContain("<svg");
      expect(textOf(markup)).toBe("in words");
    }
  });

  it("differs from every other state by its shape alone", () => {
    const shapes = MARK_KINDS.map(
      (kind) => html(<StateMark kind={kind} label="x" />).match(/<svg.*<\/svg>/)?.[0],
    );
    expect(new Set(shapes).size).toBe(MARK_KINDS.length);
  });

  it("bears its count, three figures too", () => {
    expect(textOf(html(<StateMark kind="allowed" count={105} label="at most 105 by the book" />))).toBe(
      "105 at most 105 by the book",
    );
  });

  it("has its words in the legend", () => {
    const words = textOf(html(<Legend />));
    for (const kind of MARK_KINDS) expect(words).toContain(MARK_WORDS[kind]);
    expect(textOf(html(<Legend kinds={["pain"]} />))).toBe(MARK_WORDS.pain);
  });
});

describe("a long list", () => {
  it.each([
    [1, 20, 214, "1 to 20 of 214 charges"],
    [2, 20, 214, "21 to 40 of 214 charges"],
    [11, 20, 214, "201 to 214 of 214 charges"],
    [1, 20, 0, "no charges"],
  ])("page %i by %i of %i says %s", (page, size, total, words) => {
    expect(rangeInWords(page, size, total, "charges")).toBe(words);
  });

  it("offers no way before its first page and none after its last", () => {
    const pages = (page: number) =>
      html(
        <Pagination
          page={page}
          pageSize={20}
          total={60}
          noun="rounds"
          hrefFor={(to) => `/rounds?page=${to}`}
        />,
      ).match(/href="[^"]+"/g);
    expect(pages(1)).toEqual(['href="/rounds?page=2"']);
    expect(pages(2)).toEqual(['href="/rounds?page=1"', 'href="/rounds?page=3"']);
    expect(pages(3)).toEqual(['href="/rounds?page=2"']);
  });

  it("shows nothing where one page holds it all", () => {
    expect(html(<Pagination page={1} pageSize={20} total={20} noun="rounds" hrefFor={String} />)).toBe("");
  });
});

describe("what is told in passing", () => {
  it("gives a time to machines as to people", () => {
    expect(html(<TimeText dateTime={Date.UTC(2026, 10, 26, 17)}>today 17:00</TimeText>)).toBe(
      '<time dateTime="2026-11-26T17:00:00.000Z">today 17:00</time>',
    );
  });

  it("says how far a long work is, in words, to those who hear it", () => {
    const markup = html(<ProgressBar label="Sending" value={12} max={48} words="12 of 48 MB" />);
    expect(markup).toContain('role="progressbar"');
    expect(markup).toContain('aria-valuetext="12 of 48 MB"');
    expect(markup).toContain('width="25%"');
  });

  it("needs no style attribute, so that a strict content policy can drop them all", () => {
    const markup = html(
      <>
        <Button variant="primary">Go</Button>
        <TextField label="Name" />
        <Spinner text="Reading…" />
        <ProgressBar label="Sending" value={1} words="1 of 100" />
        <StateMark kind="pain" label="pain" isLabelShown={false} />
        <Notice title="Known" />
        <EmptyState title="Nothing yet">Do this first.</EmptyState>
        <DefinitionList items={[{ term: "Throws", detail: "left" }]} />
      </>,
    );
    expect(markup).not.toContain("style=");
  });
});
