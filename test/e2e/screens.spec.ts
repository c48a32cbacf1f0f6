import type { Page } from "@playwright/test";
import {
  type Academy,
  expect,
  expectAccessible,
  LAPTOP,
  type Person,
  PHONE,
  type Theme,
  test,
} from "./academy";
import { athletesOf, database, idOf, personOf, startOf } from "./demo-records";

/** Addresses of one family's screens: each kind of page, and each state that a round or a session of it is in. */
function familyScreens(athleteId: string): string[] {
  const home = `/family/${athleteId}`;
  const rounds = oneOfEachState("round", athleteId).map((id) => `${home}/rounds/${id}`);
  const sessions = oneOfEachState("session", athleteId).map((id) => `${home}/sessions/${id}`);
  const pages = ["", "/send", "/rounds", "/times", "/throws", "/season", "/report", "/consent"].map(
    (page) => home + page,
  );
  return [...pages, ...rounds, ...sessions];
}

function oneOfEachState(what: "round" | "session", athleteId: string): string[] {
  const sqlite = database();
  const own =
    what === "round"
      ? "SELECT max(id) FROM round WHERE athlete_id = ? GROUP BY state"
      : "SELECT max(s.id) FROM session s JOIN session_athlete a ON a.session_id = s.id WHERE a.athlete_id = ? GROUP BY s.state";
  const ids = sqlite.prepare(own).pluck().all(athleteId);
  sqlite.close();
  return ids as string[];
}

/** A round in a state, the demo coach's where there is one. */
const roundIn = (state: string) =>
  idOf(
    "SELECT id FROM round WHERE state = ? ORDER BY coach_person_id IS ? DESC, received_at_ms DESC",
    state,
    personOf("coach"),
  );

const sessionIn = (state: string) =>
  idOf("SELECT id FROM session WHERE state = ? ORDER BY starts_at_ms DESC", state);

/** The checkpoint of an athlete that was looked at most, or one that never was. */
function checkpointOf(athleteId: string, which: string): string {
  return idOf(
    `SELECT c.id FROM checkpoint c LEFT JOIN judgement j ON j.checkpoint_id = c.id AND j.athlete_id = ?
     GROUP BY c.id ORDER BY count(j.id) ${which === "judged" ? "DESC" : "ASC"}`,
    athleteId,
  );
}

const ACADEMY_PAGES = [
  "",
  "/people",
  "/sites",
  "/hours",
  "/checkpoints",
  "/books",
  "/holding",
  "/settings",
].map((page) => `/academy${page}`);

const openSet = () => idOf("SELECT id FROM blind_set WHERE closed_at_ms IS NULL");

/** The blind sets, one that is being rated and one that tells how far coaches agree. */
function agreementScreens(): string[] {
  const closed = idOf("SELECT id FROM blind_set WHERE closed_at_ms IS NOT NULL");
  return ["", `/${openSet()}`, `/${closed}`].map((page) => `/academy/agreement${page}`);
}

function coachScreens(): string[] {
  const [athleteId = ""] = athletesOf("guardian");
  const rounds = ["received", "taken", "sent", "answered", "retake", "settled"].map(roundIn);
  const sessions = ["booked", "checked_in", "logged", "cancelled", "no_show"].map(sessionIn);
  return [
    "/today",
    ...["mine", "free", "all"].map((part) => `/reviews?show=${part}`),
    ...rounds.map((id) => `/reviews/${id}`),
    "/reviews/measure-again",
    `/reviews/measure-again/${idOf("SELECT id FROM remeasure_request WHERE done_at_ms IS NULL")}`,
    ...agreementScreens(),
    `/reviews/blind/${openSet()}`,
    "/athletes",
    "/arms",
    `/athletes/${athleteId}`,
    `/athletes/${athleteId}/throws`,
    `/athletes/${athleteId}/report`,
    ...["judged", "never judged"].map(
      (which) => `/athletes/${athleteId}/checkpoints/${checkpointOf(athleteId, which)}`,
    ),
    "/calendar",
    "/calendar?view=week",
    ...sessions.map((id) => `/calendar/${id}`),
    "/calendar/find",
    `/calendar/find?athlete=${athleteId}`,
    `/calendar/find?move=${sessionIn("booked")}`,
    "/academy",
    `/academy/people/${personOf("guardian")}`,
    "/account",
  ];
}

function adminScreens(): string[] {
  const child = idOf("SELECT person_id FROM athlete WHERE id = ?", athletesOf("guardian")[0] ?? "");
  return [
    "/today",
    "/reviews",
    `/reviews/${roundIn("taken")}`,
    `/reviews/${roundIn("answered")}/compare`,
    "/ledger",
    "/ledger?month=2026-10",
    ...ACADEMY_PAGES,
    ...["/rates", "/notices", "/record", "/people/new"].map((page) => `/academy${page}`),
    ...[child, personOf("coach"), personOf("guardian")].map((id) => `/academy/people/${id}`),
    ...agreementScreens(),
    "/academy/books/usa-baseball-2018",
    `/academy/people/${child}/edit`,
    `/academy/people/${personOf("coach")}/edit`,
  ];
}

/** Addresses that lead nowhere for whoever opens them: not there, or somebody else's. */
const NOWHERE = ["/nowhere", "/family/ath_somebody", "/reviews/rnd_none", "/calendar/ses_none"];

/** One person's two browsers: a phone in the light theme, a laptop in the dark. */
type Screens = readonly { page: Page; theme: Theme; width: number }[];

/** Opens the two for a person, or for nobody. */
async function screensOf(academy: Academy, who: Person | null): Promise<Screens> {
  const open = (size: typeof PHONE) => (who ? academy.as(who, size) : academy.visitor(size));
  return [
    { page: await open(PHONE), theme: "light", width: PHONE.width },
    { page: await open(LAPTOP), theme: "dark", width: LAPTOP.width },
  ];
}

/** Opens a screen on both at once and holds it to what every screen promises. */
async function lookAt(screens: Screens, address: string) {
  await test.step(address, async () => {
    await Promise.all(
      screens.map(async ({ page, theme, width }) => {
        await page.goto(address);
        const where = `${address} at ${width}`;
        await expect.soft(page.getByRole("heading", { level: 1 }), where).toHaveCount(1);
        await expect.soft(page.getByRole("main"), where).toHaveCount(1);
        await expect.soft(page, where).toHaveTitle(/\S/);
        const scroll = await page.evaluate(() => document.scrollingElement?.scrollWidth ?? 0);
        expect.soft(scroll, `${where} is no wider than the screen`).toBeLessThanOrEqual(width);
        await expectAccessible(page, theme);
      }),
    );
  });
}

/** The clock goes to a session of the coach and the first question of the check-in is answered: it is under way. */
async function beginSession(coach: Page, academy: Academy) {
  const sessionId = idOf(
    `SELECT s.id FROM session s JOIN session_athlete a ON a.session_id = s.id
     WHERE s.state = 'booked' AND s.kind IN ('bullpen', 'lesson') AND s.coach_person_id = ?
     GROUP BY s.id HAVING count(*) = 1 ORDER BY s.starts_at_ms`,
    personOf("coach"),
  );
  academy.setClock(Math.max(academy.clockMs(), startOf(sessionId)));
  await coach.goto(`/calendar/${sessionId}`);
  const asked = coach.getByRole("form", { name: /^Check in / });
  for (const question of [/^Thrown since/, "Does anything hurt?"]) {
    await asked.getByRole("radiogroup", { name: question }).getByText("No", { exact: true }).click();
  }
  await asked.getByRole("button", { name: "Record the check-in" }).click();
  await expect(coach.getByRole("form", { name: "Log the session" })).toBeVisible();
}

test.describe("each screen has one question and a title, fits its width and passes axe", () => {
  test.setTimeout(300_000);

  test("for whoever is not signed in", async ({ academy }) => {
    const screens = await screensOf(academy, null);
    for (const address of [
      "/sign-in",
      "/forgot",
      "/without-signal",
      "/join/a-link-that-was-used",
      "/season/a-link-that-was-ended",
      "/nowhere",
    ]) {
      await lookAt(screens, address);
    }
  });

  test("for a coach", async ({ academy }) => {
    await beginSession(await academy.as("coach"), academy);
    const screens = await screensOf(academy, "coach");
    for (const address of [...coachScreens(), ...NOWHERE]) await lookAt(screens, address);
  });

  test("for an admin", async ({ academy }) => {
    const screens = await screensOf(academy, "admin");
    for (const address of adminScreens()) await lookAt(screens, address);
  });

  test("for a guardian, both children", async ({ academy }) => {
    const screens = await screensOf(academy, "guardian");
    const [first = "", second = ""] = athletesOf("guardian");
    for (const address of [...familyScreens(first), `/family/${second}`, "/account", ...NOWHERE]) {
      await lookAt(screens, address);
    }
    await lookAt(screens, `/family/${first}/rounds/rnd_none`);
  });

  test("for an athlete", async ({ academy }) => {
    const screens = await screensOf(academy, "athlete");
    const [athleteId = ""] = athletesOf("athlete");
    const own = ["", "/send", "/times", "/throws", "/season", "/consent"].map(
      (page) => `/family/${athleteId}${page}`,
    );
    for (const address of [...own, "/account"]) await lookAt(screens, address);
  });
});
