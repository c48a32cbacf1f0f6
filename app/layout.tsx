import type { Metadata, Viewport } from "next";
import { cookies } from "next/headers";
import type { ReactNode } from "react";
import { readTheme, THEME_COOKIE, themeAttribute } from "@/components/shell/theme";
import { UiProvider } from "@/components/ui/ui-provider";
import { ApiProvider } from "@/components/wire/api-provider";
import "./globals.css";

export const metadata: Metadata = {
  title: { default: "Slabside", template: "%s · Slabside" },
  description: "Reviews, sessions, throwing and the month of a pitching academy.",
};

export const viewport: Viewport = { width: "device-width", initialScale: 1 };

export default async function RootLayout({ children }: { children: ReactNode }) {
  const theme = readTheme((await cookies()).get(THEME_COOKIE)?.value);
  return (
    <html lang="en" data-theme={themeAttribute(theme)}>
      <body>
        <ApiProvider>
          <UiProvider>{children}</UiProvider>
        </ApiProvider>
      </body>
    </html>
  );
}
