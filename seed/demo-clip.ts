import type { ClipParameters } from "./clips/clip-parameters";

/** A clip that is yet to be drawn: its row, the names of its files in the clip store, and what it shows. */
export interface DemoClip {
  clipId: string;
  storageName: string;
  /** The store keeps a poster under the name of its clip. */
  posterName: string;
  parameters: Partial<ClipParameters>;
}
