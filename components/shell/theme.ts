/** How light the screen is: one that was chosen, or as the system has it. */
export const THEMES = ["light", "dark", "system"] as const;

/** One of {@link THEMES}. */
export type Theme = (typeof THEMES)[number];

/** The cookie that keeps the choice, so that the server can draw the page right the first time. */
export const THEME_COOKIE = "theme";

/** One year, in seconds. */
const KEPT_FOR_SEC = 365 * 24 * 60 * 60;

/** The choice that a cookie's value stands for; anything unknown or missing is `system`. */
export function readTheme(cookieValue: string | undefined): Theme {
  return THEMES.find((theme) => theme === cookieValue) ?? "system";
}

/** What `data-theme` on the html element must be: nothing while the system decides. */
export function themeAttribute(theme: Theme): "light" | "dark" | undefined {
  return theme === "system" ? undefined : theme;
}

/** The cookie as text; choosing `system` ends it. */
export function themeCookie(theme: Theme): string {
  const age = theme === "system" ? 0 : KEPT_FOR_SEC;
  return `${THEME_COOKIE}=${theme}; Path=/; Max-Age=${age}; SameSite=Lax`;
}
