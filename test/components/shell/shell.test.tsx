import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it, vi } from "vitest";
import { currentHref } from "@/components/shell/current-link";
import { FamilyShell } from "@/components/shell/family-shell";
import { StaffShell } from "@/components/shell/staff-shell";
import { readTheme, themeAttribute, themeCookie } from "@/components/shell/theme";

vi.mock("next/navigation", () => ({ usePathname: () => "/reviews/rnd_1" }));

const nav = [
  { href: "/today", label: "Today" },
  { href: "/reviews", label: "Reviews", count: 3, countLabel: "waiting" },
  { href: "/ledger", label: "Ledger", count: 0, countLabel: "to mend" },
];

describe("the current place", () => {
  it.each([
    ["/reviews", "/reviews"],
    ["/reviews/rnd_1", "/reviews"],
    ["/reviewsomething", null],
    ["/", null],
    ["/today", "/today"],
  ])("of %s is %s", (path, href) => {
    expect(currentHref(path, nav)).toBe(href);
  });

  it("is the longest address that fits, and the root only for itself", () => {
    const items = [{ href: "/" }, { href: "/family" }, { href: "/family/throws" }];
    expect(currentHref("/family/throws/log", items)).toBe("/family/throws");
    expect(currentHref("/family/season", items)).toBe("/family");
    expect(currentHref("/", items)).toBe("/");
  });
});

describe.each([
  ["staff", StaffShell],
  ["family", FamilyShell],
])("the %s shell", (_, Shell) => {
  const markup = renderToStaticMarkup(
    <Shell nav={nav} homeHref="/today" theme="dark" account={<span>Mara Quill</span>} footer="Cautions">
      page
    </Shell>,
  );

  it("begins with a way past the navigation to the page itself", () => {
    expect(markup.indexOf('href="#main"')).toBeLessThan(markup.indexOf("<nav"));
    expect(markup.match(/<main id="main"/g)).toHaveLength(1);
  });

  it("marks the one place where one is", () => {
    expect(markup.match(/aria-current="page"/g)).toHaveLength(1);
    expect(markup).toMatch(/<a [^>]*aria-current="page"[^>]*>.*?Reviews/);
  });

  it("says how many wait and what they are, and nothing when none do", () => {
    expect(markup).toContain("waiting");
    expect(markup).not.toContain("to mend");
  });

  it("offers the theme by its name", () => {
    expect(markup).toContain('aria-label="Theme: dark"');
  });
});

describe("the theme", () => {
  it.each([
    ["light", "light", "light"],
    ["dark", "dark", "dark"],
    ["system", "system", undefined],
    ["pink", "system", undefined],
    [undefined, "system", undefined],
  ])("kept as %s is read as %s", (kept, theme, attribute) => {
    expect(readTheme(kept)).toBe(theme);
    expect(themeAttribute(readTheme(kept))).toBe(attribute);
  });

  it("is kept for a year, and forgotten when the system decides again", () => {
    expect(themeCookie("dark")).toBe("theme=dark; Path=/; Max-Age=31536000; SameSite=Lax");
    expect(themeCookie("system")).toBe("theme=system; Path=/; Max-Age=0; SameSite=Lax");
  });
});
