import { readFileSync, writeFileSync } from "node:fs";
import AxeBuilder from "@axe-core/playwright";
import { type BrowserContext, test as base, expect, type Page } from "@playwright/test";

/** The demo's people by what they are. */
export type Person = "admin" | "coach" | "guardian" | "athlete";

/** The two sizes every screen is made for. */
export const PHONE = { width: 390, height: 844 };
export const LAPTOP = { width: 1280, height: 800 };

const PASSWORD = "fastball-over-the-corner";

/** Noise that is not the product's: the network log of a refusal that the screen shows in words, or of no signal. */
const EXPECTED_NOISE =
  /Failed to load resource: (the server responded with a status of (4\d\d|507)|net::ERR_INTERNET_DISCONNECTED)/;

export interface Academy {
  /** A page signed in as a person of the demo, in a browser of its own. */
  as: (who: Person | { email: string }, viewport?: { width: number; height: number }) => Promise<Page>;
  /** A page in a browser of its own, with nobody signed in. */
  visitor: (viewport?: { width: number; height: number }) => Promise<Page>;
  /** Moves the academy's clock to an instant. */
  setClock: (ms: number) => void;
  clockMs: () => number;
  /** Its day in New York, as YYYY-MM-DD. */
  today: () => string;
}

/** Every test: console errors and uncaught exceptions of any of its pages fail it. */
export const test = base.extend<{ academy: Academy }>({
  academy: async ({ browser }, use) => {
    const noise: string[] = [];
    const opened: BrowserContext[] = [];
    async function visitor(viewport = LAPTOP) {
      const context = await browser.newContext({ viewport });
      opened.push(context);
      const page = await context.newPage();
      listen(page, noise);
      return page;
    }
    await use({
      visitor,
      async as(who, viewport) {
        const page = await visitor(viewport);
        await signIn(page, typeof who === "string" ? `${who}@slabside.example` : who.email, PASSWORD);
        return page;
      },
      setClock: (ms) => writeFileSync(clockFile(), String(ms)),
      clockMs,
      today: () => new Intl.DateTimeFormat("en-CA", { timeZone: "America/New_York" }).format(clockMs()),
    });
    for (const context of opened) await context.close();
    expect(noise, "nothing unexpected on the console").toEqual([]);
  },
});

export { expect };

function clockMs(): number {
  return Number(readFileSync(clockFile(), "utf8"));
}

function clockFile(): string {
  return `${process.env.SLABSIDE_E2E_FOLDER}/clock`;
}

/** Collects what a page reports as an error. */
export function listen(page: Page, noise: string[]) {
  page.on("console", (message) => {
    if (message.type() === "error" && !EXPECTED_NOISE.test(message.text())) {
      noise.push(`${page.url()}: ${message.text()}`);
    }
  });
  page.on("pageerror", (error) => noise.push(`${page.url()}: ${error.message}`));
}

/** Signs in and waits for the person's first screen. */
export async function signIn(page: Page, email: string, password: string) {
  await page.goto("/sign-in");
  await page.getByLabel("E-mail").fill(email);
  await page.getByLabel("Password").fill(password);
  await page.getByRole("button", { name: "Sign in" }).click();
  await page.waitForURL((url) => !url.pathname.startsWith("/sign-in") && url.pathname !== "/");
}

export type Theme = "light" | "dark";

/**
 * Fails on any WCAG 2.2 A or AA finding of axe; the journey goes on, so that one run tells all. Every screen is looked at
 * in both themes by its own test: the states that a journey reaches are looked at in one.
 */
export async function expectAccessible(page: Page, theme: Theme = "light") {
  await page.emulateMedia({ colorScheme: theme, reducedMotion: "reduce" });
  const { violations } = await new AxeBuilder({ page })
    /* No page holds a frame of another site, which is all that the slower way is for; and only what is found is read. */
    .setLegacyMode()
    .options({ resultTypes: ["violations"] })
    /* The library's own announcer holds a spoken text for some seconds after its field is gone. */
    .exclude("[data-live-announcer]")
    .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"])
    .analyze();
  const told = violations.map(
    (each) => `${each.id}: ${each.nodes.map((node) => `${node.target.join(" ")} ${node.html}`).join("; ")}`,
  );
  expect.soft(told, `${page.url()} in the ${theme} theme`).toEqual([]);
  await page.emulateMedia({ colorScheme: "light", reducedMotion: null });
}
