import { drawPicture } from "./draw-picture";
import { drawableAddress, type PlayedClip } from "./played-clip";
import { showFrame } from "./show-frame";

/** Sharp on a phone's dense screen at the width a strip gives it. */
const WIDTH_PX = 240;

/** A film that has not come within this long is passed over; its frames keep their words and numbers. */
const PATIENCE_MS = 20_000;

type Film = Pick<PlayedClip, "id" | "frameTimesMs" | "conversion">;

interface Order {
  film: Film;
  frame: number;
  told: Set<() => void>;
}

/** Pictures drawn so far, for as long as the page lives: the same few frames are asked for again and again. */
const drawn = new Map<string, string>();
const orders = new Map<string, Order>();
let isWorking = false;

const keyOf = (clipId: string, frame: number) => `${clipId} ${frame}`;

/** The address of a frame's small picture, or undefined while it is not drawn. */
export function drawnThumbnail(clipId: string, frame: number): string | undefined {
  return drawn.get(keyOf(clipId, frame));
}

/**
 * Orders the small picture of a frame. One at a time is drawn, from one unseen video, so that the clip in sight stays
 * where it is and a phone is not asked to decode many films at once.
 * @returns what takes the order back
 */
export function orderThumbnail(film: Film, frame: number, told: () => void): () => void {
  const key = keyOf(film.id, frame);
  const order = orders.get(key) ?? { film, frame, told: new Set() };
  order.told.add(told);
  orders.set(key, order);
  void work();
  return () => {
    order.told.delete(told);
    if (order.told.size === 0) orders.delete(key);
  };
}

async function work(): Promise<void> {
  if (isWorking) return;
  isWorking = true;
  for (let [next] = orders.values(); next; [next] = orders.values()) await drawFilm(next.film);
  isWorking = false;
}

/** Draws all that is ordered of one film, then lets the film go. */
async function drawFilm(film: Film): Promise<void> {
  const video = document.createElement("video");
  const end = new AbortController();
  const ofFilm = () => [...orders].find(([, order]) => order.film.id === film.id);
  try {
    await loaded(video, drawableAddress(film), end.signal);
    for (let found = ofFilm(); found; found = ofFilm()) await drawOrder(video, ...found, end.signal);
  } catch {
    // Without small pictures the frames still have their words and numbers.
    for (const [key, order] of orders) if (order.film.id === film.id) orders.delete(key);
  } finally {
    end.abort();
    video.removeAttribute("src");
    video.load();
  }
}

async function drawOrder(
  video: HTMLVideoElement,
  key: string,
  { film, frame, told }: Order,
  signal: AbortSignal,
): Promise<void> {
  const isThere = await showFrame(video, film.frameTimesMs, frame, signal);
  const picture = isThere ? drawPicture(video, WIDTH_PX)?.toDataURL("image/jpeg", 0.75) : undefined;
  if (picture) drawn.set(key, picture);
  orders.delete(key);
  for (const tell of told) tell();
}

function loaded(video: HTMLVideoElement, address: string, signal: AbortSignal): Promise<void> {
  return new Promise((resolve, reject) => {
    const give = () => reject(new Error("The film could not be drawn from."));
    const patience = setTimeout(give, PATIENCE_MS);
    signal.addEventListener("abort", () => clearTimeout(patience));
    video.muted = true;
    video.playsInline = true;
    video.preload = "auto";
    video.addEventListener("loadeddata", () => resolve(), { once: true, signal });
    video.addEventListener("error", give, { once: true, signal });
    video.src = address;
  });
}
