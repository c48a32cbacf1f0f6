import type { FrameWindow, FrameWindowEvents } from "./frame-window";

/** What a {@link WindowKeeper} is given and tells of. */
export interface WindowKept {
  /** Opens the window of decoded pictures; null where there is none to be had. */
  open: (events: FrameWindowEvents) => Promise<FrameWindow | null>;
  /** It is there from now on. */
  onOpen: () => void;
  /** A picture is held from now on. */
  onHeld: (frame: number) => void;
  /** There is none, nor will there be: the film is sought. */
  onRefused: () => void;
}

/** Keeps the window of decoded pictures of one film: opens it once it is wanted, lets it go, and takes no for an answer. */
export class WindowKeeper {
  private window: FrameWindow | null = null;
  private state: "none" | "opening" | "open" | "refused" = "none";
  /** Counts openings, so that one which comes too late is known. */
  private opening = 0;
  private isLookedAt = true;

  constructor(private readonly kept: WindowKept) {}

  now(): FrameWindow | null {
    return this.window;
  }

  /** Opens it, unless it is open, was refused, or nobody looks. */
  want(): void {
    if (this.state === "none" && this.isLookedAt) void this.open();
  }

  /** Closes it and holds nothing until {@link takeUp}. */
  letGo(): void {
    this.isLookedAt = false;
    this.opening += 1;
    this.window?.close();
    this.window = null;
    if (this.state !== "refused") this.state = "none";
  }

  takeUp(): void {
    this.isLookedAt = true;
  }

  private async open(): Promise<void> {
    this.opening += 1;
    this.state = "opening";
    const { opening } = this;
    const { onHeld } = this.kept;
    const onFailed = () => this.refuse(opening);
    try {
      const window = await this.kept.open({ onHeld, onFailed });
      if (opening !== this.opening) return window?.close();
      if (!window) return this.refuse(opening);
      this.window = window;
      this.state = "open";
      this.kept.onOpen();
    } catch {
      this.refuse(opening);
    }
  }

  private refuse(opening: number): void {
    if (opening !== this.opening) return;
    this.window = null;
    this.state = "refused";
    this.kept.onRefused();
  }
}
