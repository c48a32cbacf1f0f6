import { cookies } from "next/headers";
import { readTheme, THEME_COOKIE, type Theme } from "./theme";

/** The theme this browser chose, from its cookie; only where a page is drawn on the server. */
export async function chosenTheme(): Promise<Theme> {
  return readTheme((await cookies()).get(THEME_COOKIE)?.value);
}
