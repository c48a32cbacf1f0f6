import type { Connections } from "@/db/client";
import { replyWindowFrom } from "@/server/data/reply-windows";
import { tellOfLapse } from "@/server/data/round-notices";
import { lapsedRounds, roundsWithoutWindow, setReplyWindow, stepRound } from "@/server/data/rounds";
import { unitOfWork } from "@/server/data/unit-of-work";

/**
 * Closes the rounds that got no clip in time and tells their families; open corrections stay open. Where pain had
 * stopped the arm when the clip was asked for, and has been cleared since, the time for it begins now.
 */
export async function lapseRounds(on: Connections, nowMs: number): Promise<void> {
  await unitOfWork(on, async (tx) => {
    for (const row of await lapsedRounds(tx, nowMs)) {
      const changes = { pausedOpenMs: null, dueAtMs: null };
      await stepRound(tx, row, { step: "lapsed", actorPersonId: null, nowMs, changes });
      await tellOfLapse(tx, row.athleteId, row.lapsesOn ?? "", nowMs);
    }
    for (const row of await roundsWithoutWindow(tx)) {
      const window = await replyWindowFrom(tx, row.athleteId, nowMs);
      if (window.lapsesOn !== null) await setReplyWindow(tx, row.id, window);
    }
  });
}
