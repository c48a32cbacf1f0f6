/** The longest side of a still picture, in pixels; a phone shows it a third as wide. Common practice, no source. */
const LONGEST_SIDE_PX = 640;
/** A picture of this quality is about 60 kB. Common practice, no source. */
const JPEG_QUALITY = 0.8;
/** A browser that has not shown a frame by then will not. Common practice, no source. */
const PATIENCE_MS = 15_000;
/** Where in the clip to look: past the walk into the picture, before the end. Common practice, no source. */
const AT_SHARE = 0.4;

/**
 * Draws a frame of a video as a JPEG, in the browser that can play it.
 * @param source the address of the video: a file of this device, or a clip of this academy
 * @returns null where this browser cannot show the video; somebody else's will
 */
export async function posterFrame(source: string): Promise<Blob | null> {
  const video = document.createElement("video");
  video.muted = true;
  video.playsInline = true;
  video.preload = "auto";
  try {
    const isThere = once(video, "loadeddata");
    video.src = source;
    await isThere;
    const isAtFrame = once(video, "seeked");
    video.currentTime = Number.isFinite(video.duration) ? video.duration * AT_SHARE : 0;
    await isAtFrame;
    return await drawn(video);
  } catch {
    return null;
  } finally {
    video.removeAttribute("src");
    video.load();
  }
}

function once(video: HTMLVideoElement, event: "loadeddata" | "seeked"): Promise<void> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new Error("The video does not show.")), PATIENCE_MS);
    const settle = (done: () => void) => () => {
      clearTimeout(timer);
      done();
    };
    video.addEventListener(event, settle(resolve), { once: true });
    video.addEventListener(
      "error",
      settle(() => reject(new Error("The video does not open."))),
      { once: true },
    );
  });
}

function drawn(video: HTMLVideoElement): Promise<Blob | null> {
  const { videoWidth, videoHeight } = video;
  const scale = Math.min(1, LONGEST_SIDE_PX / Math.max(videoWidth, videoHeight));
  const canvas = document.createElement("canvas");
  canvas.width = Math.round(videoWidth * scale);
  canvas.height = Math.round(videoHeight * scale);
  const context = canvas.getContext("2d");
  if (!context || canvas.width === 0) return Promise.resolve(null);
  context.drawImage(video, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve) => canvas.toBlob(resolve, "image/jpeg", JPEG_QUALITY));
}

/** Gives a clip its still picture. The first one stays; that this one came second, or not at all, matters to nobody. */
export async function putPoster(clipId: string, picture: Blob): Promise<void> {
  await fetch(`/api/clips/${clipId}/poster`, { method: "PUT", body: picture }).catch(() => undefined);
}
