import { cookies } from "next/headers";
import type { ReactNode } from "react";
import { PlainShell } from "@/components/shell/plain-shell";
import { readTheme, THEME_COOKIE } from "@/components/shell/theme";

export default async function OpenLayout({ children }: { children: ReactNode }) {
  const theme = readTheme((await cookies()).get(THEME_COOKIE)?.value);
  return (
    <PlainShell homeHref="/" theme={theme}>
      {children}
    </PlainShell>
  );
}
