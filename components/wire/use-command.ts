"use client";
import { useRouter } from "next/navigation";
import { useCallback, useRef, useState } from "react";
import { apiClient } from "./api-client";
import { type Problem, problemOf } from "./problem";

type Client = typeof apiClient;

/** A command in the hands of a screen. */
export interface Command<Input, Answer> {
  /** Runs it; resolves to the answer, or to undefined when it was refused (then `problem` says why). */
  run: (input: Input) => Promise<Answer | undefined>;
  pending: boolean;
  problem: Problem | null;
  clear: () => void;
}

/**
 * Runs a command from a screen: one at a time, the page drawn anew after success, refusals as words. A try that got no
 * answer is repeated under the same request id when the input is the same, so that nothing happens twice.
 * @example const take = useCommand((api, input: { roundId: string }, once) => api.rounds.take.mutate(input, once));
 */
export function useCommand<Input, Answer>(
  send: (api: Client, input: Input, once: { context: { requestId: string } }) => Promise<Answer>,
  options: { refresh?: boolean } = {},
): Command<Input, Answer> {
  const router = useRouter();
  const [pending, setPending] = useState(false);
  const [problem, setProblem] = useState<Problem | null>(null);
  const unanswered = useRef<{ content: string; requestId: string } | null>(null);
  const { refresh = true } = options;

  const run = useCallback(
    async (input: Input) => {
      setPending(true);
      setProblem(null);
      const content = JSON.stringify(input);
      const requestId =
        unanswered.current?.content === content ? unanswered.current.requestId : crypto.randomUUID();
      unanswered.current = { content, requestId };
      try {
        const answer = await send(apiClient, input, { context: { requestId } });
        unanswered.current = null;
        if (refresh) router.refresh();
        return answer;
      } catch (error) {
        const told = problemOf(error);
        if (told.refusal || Object.keys(told.fields).length > 0) unanswered.current = null;
        setProblem(told);
        return undefined;
      } finally {
        setPending(false);
      }
    },
    [send, router, refresh],
  );
  return { run, pending, problem, clear: useCallback(() => setProblem(null), []) };
}
