import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { LogLineFields, type LogLineFieldsProps } from "@/components/sessions/log-line-fields";
import { LoggedLine } from "@/components/sessions/logged-line";

const DRAFT: LogLineFieldsProps["draft"] = {
  ...{ attendance: "came", minutes: 45, pitches: 22, effort: 6, work: {}, note: "" },
};

function markup(draft: Partial<LogLineFieldsProps["draft"]>) {
  const athlete = {
    athleteId: "a1",
    givenName: "Kit",
    name: "Kit Marsh",
    plannedPitches: 20,
    corrections: [],
  };
  return renderToStaticMarkup(
    <LogLineFields
      athlete={athlete as unknown as LogLineFieldsProps["athlete"]}
      kind="bullpen"
      isOneOfSeveral={false}
      draft={{ ...DRAFT, ...draft }}
      missing={{}}
      onChange={() => undefined}
    />,
  );
}

describe("one athlete's part of the log", () => {
  it("asks for the effort in the athlete's own word, and does not insist", () => {
    const fields = markup({});
    expect(fields).toContain("Effort");
    expect(fields).toContain("In Kit&#x27;s own word: 0 no effort at all, 10 as hard as can be");
    expect(fields).toMatch(/Effort[\s\S]*?optional/);
  });

  it("asks nothing of who stayed away but a note", () => {
    const fields = markup({ attendance: "no_show" });
    expect(fields).not.toContain("Effort");
    expect(fields).toContain("Note for the family");
  });

  it.each([
    ["shows the effort that was said", 6, true],
    ["shows an effort of nothing at all", 0, true],
    ["leaves out one that was not asked", null, false],
  ] as const)("%s once it is logged", (_what, effort, isShown) => {
    const log = {
      attendance: "came" as const,
      minutes: 30,
      pitches: 22,
      effort,
      note: "",
      loggedAtMs: 0,
      work: [],
    };
    const shown = renderToStaticMarkup(<LoggedLine log={log} />);
    expect(shown.includes(`${effort} of 10`)).toBe(isShown);
  });
});
