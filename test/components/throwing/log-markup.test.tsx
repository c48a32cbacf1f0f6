import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it, vi } from "vitest";
import { NO_DRAFT } from "@/components/throwing/game-draft";
import { GameFields } from "@/components/throwing/game-fields";
import { ImportThrows } from "@/components/throwing/import-throws";
import { KeptThrowsNotice } from "@/components/throwing/kept-throws-notice";
import { LogThrows } from "@/components/throwing/log-throws";
import { Teams } from "@/components/throwing/teams";
import { ThrowDeskPart } from "@/components/throwing/throw-desk";

vi.mock("next/navigation", () => ({ useRouter: () => ({ refresh: () => undefined }) }));

const TEAMS = [
  { id: "tea_river", name: "River Nine", bookName: "A book", hasEnded: false },
  { id: "tea_hill", name: "Hill Club", bookName: "A book", hasEnded: true },
];
const log = (usualKind: "game" | "bullpen") =>
  renderToStaticMarkup(
    <ThrowDeskPart personId="per_guardian">
      <LogThrows
        athlete={{ athleteId: "ath_kit", givenName: "Kit" }}
        today="2026-11-25"
        usualKind={usualKind}
        teams={TEAMS}
      />
    </ThrowDeskPart>,
  );
const act = () => undefined;

describe("the form that logs", () => {
  it("asks of a game innings, the last batter, catching, walks, the other side and pain", () => {
    const markup = log("game");
    for (const label of [
      "Innings pitched",
      "Pitches before the last batter",
      "Innings caught",
      "Intentional walks",
      "Against",
      "Does anything hurt?",
    ]) {
      expect(markup, label).toContain(label);
    }
  });

  it("asks of a bullpen nothing more, and offers a lesson in the same tap", () => {
    const markup = log("bullpen");
    expect(markup).not.toContain("Innings");
    expect(markup).not.toContain("Does anything hurt?");
    expect(markup).toContain("As a lesson");
    expect(markup).not.toContain("As a bullpen");
  });
});

describe("the fields of a game", () => {
  const fields = (teamId: string | null) =>
    renderToStaticMarkup(<GameFields game={{ ...NO_DRAFT, teamId }} teams={TEAMS} onChange={act} />);

  it("offer teams whose time has not ended, and the one that is set", () => {
    expect(fields(null)).toContain("For the team");
    expect(fields("tea_hill")).toContain("Hill Club");
    expect(fields(null)).not.toContain("Hill Club");
  });

  it("say what is wrong with innings that cannot be read", () => {
    const typed = { ...NO_DRAFT, innings: "2.5" };
    const markup = renderToStaticMarkup(<GameFields game={typed} teams={[]} onChange={act} />);
    expect(markup).toContain("Write whole innings and thirds");
    expect(markup).not.toContain("For the team");
  });
});

describe("what is kept on the phone", () => {
  const throws = { athleteId: "ath_kit", thrownOn: "2026-11-25", kind: "game", pitches: 40 } as const;
  const row = { id: "a", personId: "p", givenName: "Kit", throws: { ...throws, game: null, pain: null } };
  const notice = (problems: (string | null)[]) =>
    renderToStaticMarkup(
      <KeptThrowsNotice
        kept={problems.map((problem, at) => ({ ...row, id: String(at), problem }))}
        onSend={act}
        onRetry={act}
        onDrop={act}
      />,
    );

  it("is said with what it is, and what was refused with why and two ways on", () => {
    expect(notice([null])).toMatch(
      /Kept on this phone.*1 entry is not on the log yet.*Kit, 40 pitches, game/s,
    );
    expect(notice(["The day has not come yet."])).toMatch(
      /Not logged.*Kit, 40 pitches, game.*The day has not come yet.*Send again.*Give it up/s,
    );
    expect(notice([null, null])).toContain("2 entries are not on the log yet.");
  });

  it("is nothing when there is nothing", () => {
    expect(notice([])).toBe("");
  });
});

describe("the teams of an athlete", () => {
  const books = [{ id: "book", name: "A book" }];
  const teams = (mayManage: boolean) =>
    renderToStaticMarkup(<Teams athleteId="ath_kit" teams={{ teams: TEAMS, mayManage, books }} />);

  it("are listed with their book, and added and ended by those who may", () => {
    expect(teams(true)).toMatch(/River Nine.*plays by A book/s);
    expect(teams(true)).toContain("Add the team");
    expect(teams(true)).toContain("End River Nine");
    expect(teams(true)).not.toContain("Hill Club");
    expect(teams(false)).not.toContain("Add the team");
    expect(teams(false)).not.toContain("End River Nine");
  });
});

describe("past throwing from a file", () => {
  it("has a template to download, and a file to choose", () => {
    const markup = renderToStaticMarkup(<ImportThrows athleteId="ath_kit" />);
    expect(markup).toMatch(/href="data:text\/csv[^"]*" download="past-throwing.csv"/);
    expect(markup).toContain('type="file"');
  });
});
