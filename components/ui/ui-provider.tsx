"use client";

import { useRouter } from "next/navigation";
import type { ReactNode } from "react";
import { RouterProvider } from "react-aria-components";
import { I18nProvider } from "react-aria-components/I18nProvider";
import { ToastRegion } from "./toast";

/**
 * Stands once around the whole app: one language on server and browser alike, links in menus that go through the
 * router, and the place where toasts appear.
 */
export function UiProvider({ children }: { children: ReactNode }) {
  const router = useRouter();
  return (
    <I18nProvider locale="en-GB">
      <RouterProvider navigate={(href) => router.push(href)}>
        {children}
        <ToastRegion />
      </RouterProvider>
    </I18nProvider>
  );
}
