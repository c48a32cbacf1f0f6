"use client";
import { useCallback } from "react";
import { useCommand } from "@/components/wire/use-command";
import type { RateInput } from "@/server/api/agreement/shapes";

/** Keeps what a coach says of one frame; the page then shows the next. */
export function useRate(itemId: string) {
  return useCommand(
    useCallback(
      (api, answer: RateInput["answer"], once) => api.agreement.rate.mutate({ itemId, answer }, once),
      [itemId],
    ),
  );
}
