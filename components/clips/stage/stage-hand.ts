import { panBy, type StageView, zoomAt } from "./stage-view";

/** A press that moves less than this is a press and no drag; common practice, no source. */
const STILL_PX = 5;

/** A wheel that began to turn elsewhere scrolls the page; after a rest of this long it is a new turn. */
const WHEEL_REST_MS = 300;

/** A turn of the wheel by this much enlarges by e; a pinch on a touch pad comes as small turns. Common practice, no source. */
const WHEEL_PX = 500;
const TOUCH_PAD_PX = 100;

/** What a hand on the stage can do. */
export interface StageHandActs {
  look: (change: (view: StageView) => StageView) => void;
  /** A press on the picture itself, without a drag. */
  onPress: () => void;
  /** Whether presses are for what lies over the picture; two fingers and the wheel still are for the picture. */
  isHandTaken: boolean;
  isEnlarged: boolean;
}

interface Finger {
  x: number;
  y: number;
  target: Element;
}

/** The fingers, or the mouse, on one stage. */
export class StageHand {
  private readonly fingers = new Map<number, Finger>();
  /** Whether the press has moved, or was one of two: no press of the picture then. */
  private hasMoved = false;
  private lastWheelMs = Number.NEGATIVE_INFINITY;
  private isWheelOurs = false;

  constructor(
    private readonly stage: HTMLElement,
    private readonly picture: HTMLElement,
    private readonly acts: () => StageHandActs,
  ) {}

  /** Heeds the stage from now on. @returns what ends it */
  listen(): () => void {
    const end = new AbortController();
    const early = { signal: end.signal, capture: true };
    this.stage.addEventListener("pointerdown", (event) => this.down(event), early);
    this.stage.addEventListener("pointermove", (event) => this.move(event), early);
    this.stage.addEventListener("pointerup", (event) => this.up(event), early);
    this.stage.addEventListener("pointercancel", (event) => this.fingers.delete(event.pointerId), early);
    window.addEventListener("wheel", (event) => this.wheel(event), { passive: false, signal: end.signal });
    return () => end.abort();
  }

  private down(event: PointerEvent): void {
    if (event.pointerType === "mouse" && event.button !== 0) return;
    if (!(event.target instanceof Element) || !this.isOfPicture(event.target)) return;
    this.fingers.set(event.pointerId, { x: event.clientX, y: event.clientY, target: event.target });
    if (this.fingers.size === 1) this.hasMoved = this.isForOverlay(event.target);
    if (this.fingers.size < 2) return;
    this.hasMoved = true;
    event.stopPropagation();
    this.takeBack();
  }

  private move(event: PointerEvent): void {
    const finger = this.fingers.get(event.pointerId);
    if (!finger) return;
    if (this.fingers.size === 2) {
      event.stopPropagation();
      this.pinch(event.pointerId, finger, event);
    } else if (!this.isForOverlay(finger.target)) this.drag(event, finger);
  }

  private up(event: PointerEvent): void {
    if (this.fingers.size > 1) event.stopPropagation();
    const isPress = this.fingers.delete(event.pointerId) && this.fingers.size === 0 && !this.hasMoved;
    if (isPress) this.acts().onPress();
  }

  private wheel(event: WheelEvent): void {
    const isHere = event.target instanceof Element && this.isOfPicture(event.target);
    if (event.timeStamp - this.lastWheelMs > WHEEL_REST_MS) this.isWheelOurs = isHere;
    this.lastWheelMs = event.timeStamp;
    if (!isHere || (!this.isWheelOurs && !event.ctrlKey)) return;
    if (event.deltaY >= 0 && !this.acts().isEnlarged) {
      if (event.ctrlKey) event.preventDefault();
      return;
    }
    event.preventDefault();
    const place = this.placeOf(event.clientX, event.clientY);
    const scale = event.ctrlKey ? TOUCH_PAD_PX : WHEEL_PX;
    this.acts().look((view) => zoomAt(view, Math.exp(-event.deltaY / scale), place));
  }

  private drag(event: PointerEvent, finger: Finger): void {
    const dx = event.clientX - finger.x;
    const dy = event.clientY - finger.y;
    if (!this.hasMoved && Math.hypot(dx, dy) < STILL_PX) return;
    if (!this.hasMoved) this.stage.setPointerCapture(event.pointerId);
    this.hasMoved = true;
    this.shift(dx, dy);
    finger.x = event.clientX;
    finger.y = event.clientY;
  }

  private pinch(pointerId: number, finger: Finger, event: PointerEvent): void {
    const other = [...this.fingers].find(([id]) => id !== pointerId)?.[1];
    if (!other) return;
    const before = Math.hypot(finger.x - other.x, finger.y - other.y);
    const after = Math.hypot(event.clientX - other.x, event.clientY - other.y);
    const middle = this.placeOf((event.clientX + other.x) / 2, (event.clientY + other.y) / 2);
    if (before > 0) this.acts().look((view) => zoomAt(view, after / before, middle));
    this.shift((event.clientX - finger.x) / 2, (event.clientY - finger.y) / 2);
    finger.x = event.clientX;
    finger.y = event.clientY;
  }

  private shift(dx: number, dy: number): void {
    const { offsetWidth, offsetHeight } = this.picture;
    this.acts().look((view) => panBy(view, dx / offsetWidth, dy / offsetHeight));
  }

  private placeOf(clientX: number, clientY: number): { x: number; y: number } {
    const box = this.stage.getBoundingClientRect();
    const { offsetWidth, offsetHeight } = this.picture;
    return {
      x: (clientX - box.left - box.width / 2) / offsetWidth,
      y: (clientY - box.top - box.height / 2) / offsetHeight,
    };
  }

  /** A second finger makes it a pinch: what the first began over the picture is taken back, and both are the stage's. */
  private takeBack(): void {
    const before = [...this.fingers];
    for (const [pointerId, { target }] of before) {
      if (!this.isForOverlay(target)) continue;
      target.dispatchEvent(new PointerEvent("pointercancel", { bubbles: true, pointerId }));
      if (target.hasPointerCapture(pointerId)) target.releasePointerCapture(pointerId);
    }
    for (const [pointerId, finger] of before) this.fingers.set(pointerId, { ...finger, target: this.stage });
  }

  private isOfPicture(target: Element): boolean {
    return target === this.stage || this.picture.contains(target);
  }

  private isForOverlay(target: Element): boolean {
    return target.closest("[data-overlay]") !== null || this.acts().isHandTaken;
  }
}
