import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { LogLineFields, type LogLineFieldsProps } from "@/components/sessions/log-line-fields";
import { LoggedLine } from "@/components/sessions/logged-line";
import { UNCOUNTED } from "@/server/domain/calendar/counted-pitches";

const DRAFT: LogLineFieldsProps["draft"] = {
  ...{ attendance: "came", minutes: 45, pitches: 22, effort: 6, work: {}, note: "" },
  ...{ strikes: null, topSpeed: null, speedUnit: "mph" },
};

function markup(draft: Partial<LogLineFieldsProps["draft"]>, kind: LogLineFieldsProps["kind"] = "bullpen") {
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
      kind={kind}
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

  it("asks for strikes and the radar beside pitches alone, and shows them once logged", () => {
    expect(markup({})).toContain("Fastest by radar");
    expect(markup({}, "dry_work")).not.toContain("Fastest by radar");
    const counted = { strikes: 14, topSpeed: 71.5, speedUnit: "mph" as const };
    const log = { attendance: "came" as const, minutes: 30, pitches: 22, effort: null, note: "", work: [] };
    const shown = renderToStaticMarkup(<LoggedLine log={{ ...log, ...counted, loggedAtMs: 0 }} />);
    expect(shown).toContain("14 of 22");
    expect(shown).toContain("71.5 mph");
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
      ...UNCOUNTED,
      note: "",
      loggedAtMs: 0,
      work: [],
    };
    const shown = renderToStaticMarkup(<LoggedLine log={log} />);
    expect(shown.includes(`${effort} of 10`)).toBe(isShown);
  });
});
