import { type Browser, chromium } from "@playwright/test";
import { buildIfNeeded } from "../../server/start/prepare.mjs";
import { findChromium } from "../run/chromium.mjs";

/** Measures in a real browser against a built academy that is started for it; both are stopped at the end. */
export async function inBrowser<Found>(
  start: () => Promise<() => Promise<void>>,
  measure: (browser: Browser) => Promise<Found>,
): Promise<Found> {
  const executablePath = await findChromium();
  await buildIfNeeded();
  const stop = await start();
  const browser = await chromium.launch({
    args: ["--no-sandbox"],
    ...(executablePath ? { executablePath } : {}),
  });
  try {
    return await measure(browser);
  } finally {
    await browser.close();
    await stop();
  }
}

/** What the loader wraps named functions in is not there in a page. */
export const NAMED_IN_PAGE = "globalThis.__name = (named) => named";
