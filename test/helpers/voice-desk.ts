import { routes } from "./clip-routes";
import { makeVoice } from "./make-voice";

async function read(answering: Promise<Response>) {
  const response = await answering;
  const bytes = new Uint8Array(await response.arrayBuffer());
  const json = () => JSON.parse(new TextDecoder().decode(bytes));
  return { status: response.status, headers: response.headers, bytes, json };
}

/** Speaks a note on a round as whoever is signed in. */
export function speak(roundId: string, recorded: Uint8Array, headers: Record<string, string> = {}) {
  const request = new Request(`http://academy.test/api/rounds/${roundId}/voice`, {
    method: "POST",
    body: Buffer.from(recorded),
    headers: { "content-type": "audio/webm", ...headers },
  });
  return read(routes.keepVoiceNote(request, roundId));
}

/** Three seconds spoken on a round. @returns the note's id */
export async function spokenOn(roundId: string): Promise<string> {
  return (await speak(roundId, await makeVoice())).json().voiceId;
}

/** Asks for a spoken note as whoever is signed in. */
export function hear(voiceId: string, headers: Record<string, string> = {}) {
  const request = new Request(`http://academy.test/api/voice/${voiceId}`, { headers });
  return read(routes.voiceNote(request, voiceId));
}
