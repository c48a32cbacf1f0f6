import { type Connections, connect } from "@/db/client";

const held = globalThis as unknown as { slabsideConnections?: Connections };

/** The connections of this process, opened on first use (never at import: a production build must not open them). */
export function connections(path: string): Connections {
  held.slabsideConnections ??= connect(path);
  return held.slabsideConnections;
}
