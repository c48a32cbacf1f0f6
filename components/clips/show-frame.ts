import { frameAt, SEEK_PARTS, seekTargetMs } from "./frame-table";

/** What the browser tells of a picture it has put on the screen. */
interface PresentedPicture {
  mediaTime: number;
}

/** A video whose browser tells of each picture; older ones do not. */
type TellingVideo = HTMLVideoElement & {
  requestVideoFrameCallback?: (told: (nowMs: number, picture: PresentedPicture) => void) => number;
  cancelVideoFrameCallback?: (handle: number) => void;
};

/** A browser that says nothing for this long after a seek will say nothing more. */
const SILENCE_MS = 1500;

/** After a seek has ended, its picture follows within a few redraws. */
const AFTER_SEEK_MS = 250;

/**
 * Calls back with the frame of every picture the browser shows, until stopped. Without the browser's own word the
 * frame is told from the time of the video, after a seek and while playing.
 * @returns what stops it
 */
export function watchFrames(
  video: HTMLVideoElement,
  timesMs: readonly number[],
  told: (frame: number) => void,
): () => void {
  const telling = video as TellingVideo;
  if (!telling.requestVideoFrameCallback) return watchByTime(video, timesMs, told);
  let handle = 0;
  let isOver = false;
  const next = () => {
    handle = telling.requestVideoFrameCallback?.((_now, picture) => {
      told(frameAt(timesMs, picture.mediaTime * 1000));
      // Whoever is told may have had enough of it.
      if (!isOver) next();
    }) as number;
  };
  next();
  return () => {
    isOver = true;
    telling.cancelVideoFrameCallback?.(handle);
  };
}

function watchByTime(
  video: HTMLVideoElement,
  timesMs: readonly number[],
  told: (frame: number) => void,
): () => void {
  /* While it seeks, its time is the one that was asked for and not yet that of the picture. */
  const tell = () => video.seeking || told(frameAt(timesMs, video.currentTime * 1000));
  for (const event of ["seeked", "timeupdate"] as const) video.addEventListener(event, tell);
  return () => {
    for (const event of ["seeked", "timeupdate"] as const) video.removeEventListener(event, tell);
  };
}

/**
 * Puts one frame on the picture and makes sure that it is the one: by the table it seeks into the frame's middle, and
 * asks what was shown; when it was another, elsewhere in the frame.
 * @returns whether the frame is on the picture; false as well when `signal` ended the try, or an error of the film
 */
export async function showFrame(
  video: HTMLVideoElement,
  timesMs: readonly number[],
  frame: number,
  signal: AbortSignal,
): Promise<boolean> {
  for (const part of SEEK_PARTS) {
    if (signal.aborted || video.error) return false;
    const isShown = presented(video, timesMs, frame, signal);
    video.currentTime = seekTargetMs(timesMs, frame, part, video.duration * 1000) / 1000;
    if (await isShown) return true;
  }
  return false;
}

/** Waits until the frame is presented, the seek has ended without it, or nothing is said any more. */
function presented(
  video: HTMLVideoElement,
  timesMs: readonly number[],
  frame: number,
  signal: AbortSignal,
): Promise<boolean> {
  return new Promise((resolve) => {
    const end = (isShown: boolean) => {
      stop();
      clearTimeout(silence);
      video.removeEventListener("seeked", seeked);
      video.removeEventListener("error", given);
      signal.removeEventListener("abort", given);
      resolve(isShown);
    };
    const given = () => end(false);
    let silence = setTimeout(given, SILENCE_MS);
    const seeked = () => {
      /* The word of the seek before this one. */
      if (video.seeking) return;
      clearTimeout(silence);
      silence = setTimeout(given, AFTER_SEEK_MS);
    };
    /* A browser shows the picture first and says a little later, or in one case of ten much later, that it has sought. */
    const stop = watchFrames(video, timesMs, (shown) => {
      if (shown === frame) end(true);
    });
    video.addEventListener("seeked", seeked);
    video.addEventListener("error", given);
    signal.addEventListener("abort", given);
  });
}
