import { z } from "zod";

/** Where a spoken note is heard. */
export const voiceAddress = (voiceId: string): string => `/api/voice/${voiceId}`;

/** Where the spoken notes of a round are kept. */
export const roundVoiceAddress = (roundId: string): string => `/api/rounds/${roundId}/voice`;

const kept = z.object({ voiceId: z.string() });
const refused = z.object({ sentence: z.string() });

const UNREACHABLE = "The academy cannot be reached.";
const ON_DEVICE = "What you said is kept on this device and is sent once the academy is there.";
const ON_PAGE = "What you said is on this page alone: leave it open and send it again.";

/** What came of keeping a spoken note: its id, or why it was not kept. */
export type KeptVoice = { voiceId: string } | { sentence: string };

/**
 * Sends a spoken note to be kept with a round's draft. Never throws: a lost line is an answer in words too.
 * @param isOnDevice whether it is kept on the device until then; the words say so
 */
export async function keepVoice(roundId: string, spoken: Blob, isOnDevice: boolean): Promise<KeptVoice> {
  try {
    const headers = { "content-type": spoken.type.split(";")[0] || "application/octet-stream" };
    const answer = await fetch(roundVoiceAddress(roundId), { method: "POST", headers, body: spoken });
    const body: unknown = await answer.json();
    if (answer.ok) return kept.parse(body);
    return { sentence: refused.parse(body).sentence };
  } catch {
    return { sentence: `${UNREACHABLE} ${isOnDevice ? ON_DEVICE : ON_PAGE}` };
  }
}
